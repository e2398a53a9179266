package afterlength.craft.air;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What the first lines of a logger file show of its layout, to be offered for a person to confirm: separator, lines above the
 * readings, headings, columns, decimal sign, °F by its heading. Never offered: the order of day and month. A column of numbers is
 * known by its heading, else by its place.
 */
public final class LayoutGuess {
    private static final char[] SEPARATORS = {';', '\t', ',', '|'};

    private final List<String> lines;
    private final char separator;
    private final int linesBefore;

    private LayoutGuess(List<String> lines, char separator, int linesBefore) {
        this.lines = lines;
        this.separator = separator;
        this.linesBefore = linesBefore;
    }

    /** Empty where no line holds a time and two numbers. */
    public static Optional<LayoutGuess> find(List<String> firstLines) {
        return IntStream.range(0, firstLines.size())
                .boxed()
                .flatMap(line -> IntStream.range(0, SEPARATORS.length)
                        .mapToObj(n -> new LayoutGuess(bare(firstLines), SEPARATORS[n], line)))
                .filter(guess -> guess.isReading(guess.columns(guess.linesBefore)))
                .findFirst();
    }

    private static List<String> bare(List<String> firstLines) {
        return firstLines.stream().map(text -> text.replace("\uFEFF", "")).toList();
    }

    private List<String> columns(int line) {
        return Columns.split(lines.get(line), separator);
    }

    private boolean isReading(List<String> columns) {
        long numbers = columns.stream().filter(LayoutGuess::isNumber).count();
        return columns.size() > 2 && numbers >= 2 && timeColumn(columns).isPresent();
    }

    private static boolean isNumber(String column) {
        return !Double.isNaN(LoggerNumber.read(column, '.')) || !Double.isNaN(LoggerNumber.read(column, ','));
    }

    private Optional<Integer> timeColumn(List<String> columns) {
        for (int n = 0; n < columns.size(); n++) {
            if (LoggerTime.looksLikeTime(columns.get(n))
                    || (n > 0 && LoggerTime.looksLikeTime(columns.get(n - 1) + " " + columns.get(n)))) {
                return Optional.of(n + 1);
            }
        }
        return Optional.empty();
    }

    public char separator() {
        return separator;
    }

    public int linesBefore() {
        return linesBefore;
    }

    /** The columns of the line above the readings, or of the first reading where there is none. */
    public List<String> headings() {
        List<String> reading = columns(linesBefore);
        List<String> above = linesBefore == 0 ? List.of() : columns(linesBefore - 1);
        return above.size() == reading.size() ? above : reading;
    }

    public List<String> firstReading() {
        return columns(linesBefore);
    }

    public int timeColumn() {
        return timeColumn(firstReading()).orElseThrow();
    }

    /** The column of dates beside it, or 0 where the time holds its date. */
    public int dateColumn() {
        return LoggerTime.looksLikeTime(firstReading().get(timeColumn() - 1)) ? 0 : timeColumn() - 1;
    }

    public int temperatureColumn() {
        return numberColumn(0, "temp", "°c", "°f", "t [", "celsius");
    }

    public int humidityColumn() {
        return numberColumn(1, "hum", "rh", "r.h", "feucht");
    }

    private int numberColumn(int place, String... words) {
        List<Integer> numbers = numberColumns();
        for (int column : numbers) {
            String heading = headings().get(column - 1).toLowerCase(Locale.ROOT);
            if (List.of(words).stream().anyMatch(heading::contains)) {
                return column;
            }
        }
        return numbers.get(Math.min(place, numbers.size() - 1));
    }

    private List<Integer> numberColumns() {
        List<Integer> numbers = new ArrayList<>();
        List<String> reading = firstReading();
        for (int n = 0; n < reading.size(); n++) {
            if (isNumber(reading.get(n)) && n + 1 != timeColumn() && n + 1 != dateColumn()) {
                numbers.add(n + 1);
            }
        }
        return numbers;
    }

    public char decimalSign() {
        return separator != ',' && firstReading().get(temperatureColumn() - 1).indexOf(',') >= 0 ? ',' : '.';
    }

    public TemperatureScale temperatureScale() {
        String heading = headings().get(temperatureColumn() - 1).toLowerCase(Locale.ROOT);
        boolean fahrenheit = heading.contains("°f")
                || heading.contains("fahrenheit")
                || heading.endsWith("_f")
                || heading.contains("(f)")
                || heading.contains("[f]");
        return fahrenheit ? TemperatureScale.FAHRENHEIT : TemperatureScale.CELSIUS;
    }

    /** Whether the dates are digits in which day and month could be confused, so that a person has to say. */
    public boolean mustAskForDayOrder() {
        return LoggerTime.isAmbiguous(dated(firstReading()));
    }

    private String dated(List<String> reading) {
        String time = reading.get(timeColumn() - 1);
        return dateColumn() == 0 ? time : reading.get(dateColumn() - 1) + " " + time;
    }

    /** Whether no humidity in the lines shown is above 1, so that it may be a fraction: a person has to say. */
    public boolean mustAskForHumidityScale() {
        return IntStream.range(linesBefore, lines.size())
                .mapToObj(this::columns)
                .filter(columns -> columns.size() >= humidityColumn())
                .mapToDouble(columns -> LoggerNumber.read(columns.get(humidityColumn() - 1), decimalSign()))
                .allMatch(value -> !(value > 1));
    }
}
