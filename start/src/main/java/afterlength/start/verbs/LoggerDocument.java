package afterlength.start.verbs;

import afterlength.craft.air.DayOrder;
import afterlength.craft.air.HumidityScale;
import afterlength.craft.air.LayoutGuess;
import afterlength.craft.air.LoggerLayout;
import afterlength.craft.air.TemperatureScale;
import afterlength.craft.units.Length;
import afterlength.craft.wood.Cut;
import afterlength.craft.wood.OpenFaces;
import afterlength.craft.wood.PlateResponse;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** The layout of a logger file and the plate, from a document of optional keys; what it leaves out, the file itself may show. */
final class LoggerDocument {
    private static final int LAST_COLUMN = 1000;
    private static final int LAST_HEADING = 10_000;
    private static final double USUAL_PLATE_MM = 2.5;
    private static final double THICKEST_MM = 100;

    private final DocumentReader document;
    private final LayoutGuess guess;

    LoggerDocument(DocumentReader document, LayoutGuess guess) {
        this.document = document;
        this.guess = guess;
    }

    /** To be used only while the document has no problems. */
    LoggerLayout layout() {
        return new LoggerLayout(
                whole("header_lines", guess.linesBefore(), 0, LAST_HEADING),
                letter("separator", guess.separator()),
                letter("decimal_sign", guess.decimalSign()),
                whole("time_column", guess.timeColumn(), 1, LAST_COLUMN),
                whole("date_column", guess.dateColumn(), 0, LAST_COLUMN),
                whole("temperature_column", guess.temperatureColumn(), 1, LAST_COLUMN),
                whole("humidity_column", guess.humidityColumn(), 1, LAST_COLUMN),
                dayOrder(),
                one("temperature_unit", TemperatureScale.values(), LoggerDocument::word, guess.temperatureScale()),
                humidityScale(),
                zone(),
                one("clock", new Boolean[] {false, true}, follows -> follows ? "summer time" : "fixed", false));
    }

    PlateResponse plate() {
        double plate_mm = document.find("plate_mm")
                .map(value -> value.asNumber(Range.between(0.5, THICKEST_MM, "mm")))
                .orElse(USUAL_PLATE_MM);
        Cut cut = one("cut", Cut.values(), LoggerDocument::lower, Cut.QUARTER);
        OpenFaces faces = one("faces", OpenFaces.values(), LoggerDocument::lower, OpenFaces.ONE);
        return PlateResponse.of(Length.ofMm(Double.isNaN(plate_mm) ? USUAL_PLATE_MM : plate_mm), cut, faces);
    }

    private DayOrder dayOrder() {
        if (guess.mustAskForDayOrder()) {
            return document.get("day_order")
                    .asOneOf(List.of(DayOrder.values()), LoggerDocument::word)
                    .orElse(DayOrder.DAY_FIRST);
        }
        return one("day_order", DayOrder.values(), LoggerDocument::word, DayOrder.YEAR_FIRST);
    }

    private HumidityScale humidityScale() {
        if (guess.mustAskForHumidityScale()) {
            return document.get("humidity_unit")
                    .asOneOf(List.of(HumidityScale.values()), LoggerDocument::word)
                    .orElse(HumidityScale.PER_CENT);
        }
        return one("humidity_unit", HumidityScale.values(), LoggerDocument::word, HumidityScale.PER_CENT);
    }

    private ZoneId zone() {
        String name = document.find("zone").map(DocumentValue::asText).orElse("UTC");
        try {
            return name.isEmpty() ? ZoneOffset.UTC : ZoneId.of(name);
        } catch (DateTimeException unknown) {
            document.refuse("/zone", name, "zone is not a place that is known; give one such as Europe/Berlin or UTC.");
            return ZoneOffset.UTC;
        }
    }

    private int whole(String key, int shown, int least, int most) {
        double value = document.find(key)
                .map(given -> given.asNumber(Range.between(least, most, "")))
                .orElse((double) shown);
        if (Double.isNaN(value)) {
            return shown;
        }
        if (value != Math.rint(value)) {
            document.refuse("/" + key, value, key + " is " + value + "; give a whole number.");
        }
        return (int) value;
    }

    private char letter(String key, char shown) {
        String text = document.find(key).map(DocumentValue::asText).orElse(Character.toString(shown));
        if (text.length() != 1 || Character.isLetterOrDigit(text.charAt(0)) || text.charAt(0) == '"') {
            document.refuse("/" + key, text, key + " is not one mark; give one such as , or ;");
            return shown;
        }
        return text.charAt(0);
    }

    private <T> T one(String key, T[] permitted, Function<T, String> word, T usual) {
        return document.find(key)
                .flatMap(value -> value.asOneOf(List.of(permitted), word))
                .orElse(usual);
    }

    private static String word(DayOrder order) {
        return switch (order) {
            case YEAR_FIRST -> "year";
            case DAY_FIRST -> "day";
            case MONTH_FIRST -> "month";
        };
    }

    private static String word(TemperatureScale scale) {
        return scale == TemperatureScale.CELSIUS ? "C" : "F";
    }

    private static String word(HumidityScale scale) {
        return scale == HumidityScale.PER_CENT ? "pct" : "fraction";
    }

    private static String lower(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT);
    }
}
