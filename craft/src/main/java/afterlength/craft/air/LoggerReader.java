package afterlength.craft.air;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * Reads a logger file row by row: push every line in, then finish. Nothing is passed over in silence: a row is a reading or stands
 * among the rejected with its line and reason. Lines are given up at once; what stays is twenty bytes for each reading.
 */
public final class LoggerReader {
    /** Longer than any row of readings; a file without line ends is no logger file. */
    public static final int LONGEST_ROW = 4096;

    private static final double COLDEST_C = -50;
    private static final double HOTTEST_C = 80;

    private final LoggerLayout layout;
    private final LoggerClock clock;
    private final RowCollector readings = new RowCollector();
    private final RejectedList rejected = new RejectedList();
    private final List<LoggerNote> notes = new ArrayList<>();
    private int line;
    private int rows;
    private boolean setBackBefore;
    private boolean broken;

    public LoggerReader(LoggerLayout layout) {
        this.layout = layout;
        clock = new LoggerClock(layout);
    }

    /** Whether more lines are of use; when not, finish. */
    public boolean wantsMore() {
        return !broken;
    }

    /** Takes the next line; a mark of byte order before the first is not part of it. */
    public void line(String whole) {
        line++;
        String text = line == 1 && whole.startsWith("\uFEFF") ? whole.substring(1) : whole;
        if (line <= layout.linesBefore() || text.isBlank() || broken) {
            return;
        }
        rows++;
        if (readings.isFull()) {
            rejected.add(line, RowFault.BEYOND_THE_LIMIT, "");
        } else {
            findFault(text).ifPresent(fault -> rejected.add(line, fault, text));
        }
        if (rejected.isFull()) {
            broken = true;
            notes.add(new LoggerNote.NotLaidOutSo(line));
        }
    }

    /** Takes the row as a reading, or tells why not. */
    private Optional<RowFault> findFault(String text) {
        if (text.length() > LONGEST_ROW) {
            return Optional.of(RowFault.TOO_LONG);
        }
        List<String> columns = Columns.split(text, layout.separator());
        if (columns.size() < layout.lastColumn()) {
            return Optional.of(RowFault.TOO_FEW_COLUMNS);
        }
        double t_C = layout.temperatureScale().celsius(number(columns, layout.temperatureColumn()));
        double rh_pct = layout.humidityScale().pct(number(columns, layout.humidityColumn()));
        Optional<RowFault> fault = findFault(t_C, rh_pct);
        return fault.isPresent() ? fault : findTimeFault(columns, t_C, rh_pct);
    }

    private double number(List<String> columns, int column) {
        return LoggerNumber.read(columns.get(column - 1), layout.decimalSign());
    }

    private static Optional<RowFault> findFault(double t_C, double rh_pct) {
        if (Double.isNaN(t_C)) {
            return Optional.of(RowFault.TEMPERATURE_UNREADABLE);
        }
        if (t_C < COLDEST_C || t_C > HOTTEST_C) {
            return Optional.of(RowFault.TEMPERATURE_IMPOSSIBLE);
        }
        if (Double.isNaN(rh_pct)) {
            return Optional.of(RowFault.HUMIDITY_UNREADABLE);
        }
        return rh_pct < 0 || rh_pct > 100 ? Optional.of(RowFault.HUMIDITY_IMPOSSIBLE) : Optional.empty();
    }

    private Optional<RowFault> findTimeFault(List<String> columns, double t_C, double rh_pct) {
        String time = columns.get(layout.timeColumn() - 1);
        String dated = layout.dateColumn() == 0 ? time : columns.get(layout.dateColumn() - 1) + " " + time;
        Optional<LocalDateTime> local = LoggerTime.find(dated, layout.dayOrder());
        if (local.isEmpty()) {
            return Optional.of(RowFault.TIME_UNREADABLE);
        }
        OptionalLong moment_s = clock.findMoment_s(local.get());
        if (moment_s.isEmpty()) {
            return Optional.of(RowFault.TIME_DOES_NOT_EXIST);
        }
        if (clock.wasSetBack() && !setBackBefore) {
            notes.add(new LoggerNote.HourTwice(line));
        }
        setBackBefore = clock.wasSetBack();
        readings.add(line, moment_s.getAsLong(), t_C, rh_pct);
        return Optional.empty();
    }

    public LoggerReading finish() {
        if (readings.backwards() > 0) {
            notes.add(new LoggerNote.PutInOrder(readings.backwards()));
        }
        RejectedList doubled = new RejectedList();
        AirRecord record = readings.finish(doubled);
        return new LoggerReading(record, rows, rejected.with(doubled), notes, broken);
    }
}
