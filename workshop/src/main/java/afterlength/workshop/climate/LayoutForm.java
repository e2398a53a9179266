package afterlength.workshop.climate;

import afterlength.craft.air.DayOrder;
import afterlength.craft.air.HumidityScale;
import afterlength.craft.air.LayoutGuess;
import afterlength.craft.air.LoggerLayout;
import afterlength.craft.air.TemperatureScale;
import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Typed;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the layout of a logger file from what was chosen; what the file shows is filled in, the order of day and month never. */
final class LayoutForm {
    static final List<Choice> SEPARATORS = List.of(
            new Choice(",", "comma"), new Choice(";", "semicolon"), new Choice("tab", "tab"), new Choice("|", "bar |"));
    static final List<Choice> DECIMAL_SIGNS = List.of(new Choice(".", "point, 20.5"), new Choice(",", "comma, 20,5"));
    static final List<Choice> DAY_ORDERS = List.of(DayOrder.values()).stream()
            .map(order -> new Choice(order.name(), order.words()))
            .toList();
    static final List<Choice> TEMPERATURES = List.of(TemperatureScale.values()).stream()
            .map(scale -> new Choice(scale.name(), scale.unit()))
            .toList();
    static final List<Choice> HUMIDITIES = List.of(HumidityScale.values()).stream()
            .map(scale -> new Choice(scale.name(), scale.unit()))
            .toList();
    static final List<Choice> CLOCKS = List.of(
            new Choice("SUMMER_TIME", "it follows summer time"),
            new Choice("FIXED", "it stays on winter time all year"));

    private static final int LAST_COLUMN = 1000;
    private static final int LAST_HEADING = 10_000;

    private final Typed typed;

    private LayoutForm(Typed typed) {
        this.typed = typed;
    }

    static Map<String, String> typedOf(LayoutGuess guess) {
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("header_lines", Integer.toString(guess.linesBefore()));
        fields.put("separator", guess.separator() == '\t' ? "tab" : Character.toString(guess.separator()));
        fields.put("decimal_sign", Character.toString(guess.decimalSign()));
        fields.put("time_column", Integer.toString(guess.timeColumn()));
        fields.put("date_column", guess.dateColumn() == 0 ? "" : Integer.toString(guess.dateColumn()));
        fields.put("temperature_column", Integer.toString(guess.temperatureColumn()));
        fields.put("humidity_column", Integer.toString(guess.humidityColumn()));
        fields.put("temperature_unit", guess.temperatureScale().name());
        fields.put("humidity_unit", guess.mustAskForHumidityScale() ? "" : HumidityScale.PER_CENT.name());
        fields.put("day_order", guess.mustAskForDayOrder() ? "" : DayOrder.YEAR_FIRST.name());
        return fields;
    }

    /** Null where something could not be read; the form knows what. */
    static @Nullable LoggerLayout read(Typed typed, ZoneId zone) {
        return new LayoutForm(typed).read(zone).orElse(null);
    }

    private Optional<LoggerLayout> read(ZoneId zone) {
        int linesBefore = whole("header_lines", "Lines above the readings", 0, LAST_HEADING, -1);
        int time = whole("time_column", "The column of the time", 1, LAST_COLUMN, -1);
        int date = whole("date_column", "The column of the date", 1, LAST_COLUMN, 0);
        int temperature = whole("temperature_column", "The column of the temperature", 1, LAST_COLUMN, -1);
        int humidity = whole("humidity_column", "The column of the humidity", 1, LAST_COLUMN, -1);
        char separator = mark("separator", "The separator", SEPARATORS);
        char decimal = mark("decimal_sign", "The decimal sign", DECIMAL_SIGNS);
        DayOrder order = typed.choice("day_order", "The order of day and month", DayOrder.class);
        TemperatureScale celsius =
                typed.choice("temperature_unit", "The unit of the temperature", TemperatureScale.class);
        HumidityScale percent = typed.choice("humidity_unit", "The unit of the humidity", HumidityScale.class);
        String clock = typed.raw("clock");
        if (!clock.equals("SUMMER_TIME") && !clock.equals("FIXED")) {
            typed.note("clock", "The logger's clock is not chosen; say whether it follows summer time.");
        }
        if (!typed.sound() || order == null || celsius == null || percent == null) {
            return Optional.empty();
        }
        return Optional.of(new LoggerLayout(
                linesBefore,
                separator,
                decimal,
                time,
                date,
                temperature,
                humidity,
                order,
                celsius,
                percent,
                zone,
                clock.equals("SUMMER_TIME")));
    }

    /** An empty field means {@code missing}; −1 when it must not be empty. */
    private int whole(String name, String label, int least, int most, int missing) {
        if (missing < 0 && typed.raw(name).isBlank()) {
            typed.note(name, label + " is empty. Count from the left, beginning with " + least + ".");
        }
        Integer value = typed.whole(name, label, least, most);
        return value == null ? missing : value;
    }

    private char mark(String name, String label, List<Choice> permitted) {
        String text = typed.raw(name);
        if (permitted.stream().noneMatch(choice -> choice.value().equals(text))) {
            typed.note(name, label + " is not chosen. Choose one.");
            return ',';
        }
        return text.equals("tab") ? '\t' : text.charAt(0);
    }
}
