package afterlength.craft.air;

import java.time.ZoneId;

/**
 * How a logger file is laid out. Columns count from 1.
 *
 * @param linesBefore lines above the first row of readings, headings included
 * @param timeColumn holds the time, and the date too where there is no column of dates
 * @param dateColumn holds the date alone, or 0
 * @param zone where the logger hangs
 * @param summerTime whether its clock is set forward in summer; otherwise it stays on the zone's own time all year
 */
public record LoggerLayout(
        int linesBefore,
        char separator,
        char decimalSign,
        int timeColumn,
        int dateColumn,
        int temperatureColumn,
        int humidityColumn,
        DayOrder dayOrder,
        TemperatureScale temperatureScale,
        HumidityScale humidityScale,
        ZoneId zone,
        boolean summerTime) {
    public LoggerLayout {
        if (linesBefore < 0 || timeColumn < 1 || dateColumn < 0 || temperatureColumn < 1 || humidityColumn < 1) {
            throw new IllegalArgumentException("columns count from 1 and lines from 0: " + timeColumn + ", "
                    + dateColumn + ", " + temperatureColumn + ", " + humidityColumn + ", " + linesBefore);
        }
    }

    int lastColumn() {
        return Math.max(Math.max(timeColumn, dateColumn), Math.max(temperatureColumn, humidityColumn));
    }
}
