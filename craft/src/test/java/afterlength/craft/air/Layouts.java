package afterlength.craft.air;

import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;

/** Layouts of the test files, and a file read with one. */
final class Layouts {
    static final LoggerLayout ISO = new LoggerLayout(
            1,
            ',',
            '.',
            1,
            0,
            2,
            3,
            DayOrder.YEAR_FIRST,
            TemperatureScale.CELSIUS,
            HumidityScale.PER_CENT,
            ZoneOffset.UTC,
            false);

    private Layouts() {}

    static LoggerLayout european() {
        return new LoggerLayout(
                1,
                ';',
                ',',
                1,
                0,
                2,
                3,
                DayOrder.DAY_FIRST,
                TemperatureScale.CELSIUS,
                HumidityScale.PER_CENT,
                ZoneId.of("Europe/Berlin"),
                true);
    }

    static LoggerReading read(LoggerLayout layout, String file) {
        return read(layout, file.lines().toList());
    }

    static LoggerReading read(LoggerLayout layout, List<String> lines) {
        LoggerReader reader = new LoggerReader(layout);
        lines.forEach(reader::line);
        return reader.finish();
    }

    static List<String> rejected(LoggerReading reading) {
        return reading.rejected().stream().map(RejectedRows::text).toList();
    }
}
