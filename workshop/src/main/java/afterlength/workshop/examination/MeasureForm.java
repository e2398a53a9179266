package afterlength.workshop.examination;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a measure from what was typed. A quantity that the program knows keeps its unit; own words may have any unit. */
final class MeasureForm {
    static final List<String> UNITS = List.of("mm", "°", "g", "Hz", "N", "%");

    /** For the shop's own quantities; a guard against slips of the keyboard. */
    private static final double LARGEST = 100_000;

    private static final double SMALLEST_PLUS_MINUS = 0.001;

    /** Air in which somebody works; the moisture curve has its own, wider range. */
    private static final double COLDEST_C = -5;

    private static final double HOTTEST_C = 50;

    private MeasureForm() {}

    static Measure read(Typed typed, long visitId, Instant now) {
        return read(typed, visitId, null, now, now);
    }

    /** A correction: measured when it was measured, written now. */
    static Measure read(Typed typed, Measure before, Instant now) {
        return read(typed, before.visitId(), before.id(), before.takenAt(), now);
    }

    private static Measure read(Typed typed, long visitId, @Nullable Long replaces, Instant takenAt, Instant now) {
        String quantity = typed.required("quantity", "The quantity", 80);
        Optional<Quantity> known = Quantity.findByWords(quantity);
        Moment moment = typed.choice("moment", "The moment", Moment.class);
        Air air = air(typed);
        return new Measure(
                0,
                visitId,
                replaces,
                false,
                moment == null ? Moment.BEFORE : moment,
                known.map(Quantity::name).orElse(quantity),
                value(typed, known),
                unit(typed, known),
                plusMinus(typed),
                typed.required("method", "The method", 300),
                air.temperature_C(),
                air.humidity_pct(),
                takenAt,
                typed.required("hand", "The hand", 60),
                now);
    }

    static Air air(Typed typed) {
        return new Air(
                typed.decimal("temperature_c", "The temperature of the air", "°C", COLDEST_C, HOTTEST_C),
                typed.decimal("humidity_pct", "The humidity of the air", "%", 0, 100));
    }

    private static double value(Typed typed, Optional<Quantity> known) {
        String label = "The value";
        double lowest = -LARGEST;
        double highest = LARGEST;
        if (known.isPresent()) {
            label = "The value of " + known.get().words();
            lowest = known.get().lowest();
            highest = known.get().highest();
        }
        return typed.requiredDecimal("value", label, known.map(Quantity::unit).orElse(""), lowest, highest);
    }

    private static String unit(Typed typed, Optional<Quantity> known) {
        String unit = typed.text("unit", "The unit", 12);
        if (known.isEmpty()) {
            return typed.required("unit", "The unit", 12);
        }
        String usual = known.get().unit();
        if (!unit.isEmpty() && !unit.equals(usual)) {
            typed.note(
                    "unit",
                    "The unit of " + known.get().words() + " is “" + unit + "”; it is kept in " + usual
                            + " so that it can be compared and reckoned with. Convert the value and its ±.");
        }
        return usual;
    }

    private static double plusMinus(Typed typed) {
        if (typed.raw("plus_minus").isBlank()) {
            typed.note(
                    "plus_minus",
                    "The value has no ±. Write how far it may be off, in the same unit: about 0.5 mm for a rule by eye, "
                            + "0.1 mm for a calliper on wood; measure twice and see.");
            return 1;
        }
        double plusMinus = typed.requiredDecimal("plus_minus", "The ±", "", SMALLEST_PLUS_MINUS, LARGEST);
        return Double.isNaN(plusMinus) ? 1 : plusMinus;
    }

    /** A form for the next measure, with the air and what stays the same from one measure to the next. */
    static Typed fresh(Air air, Moment moment, String hand) {
        return Typed.known(Map.of(
                "moment", moment.name(),
                "temperature_c", Figures.typed(air.temperature_C()),
                "humidity_pct", Figures.typed(air.humidity_pct()),
                "unit", "mm",
                "hand", hand));
    }

    static Typed known(Measure measure) {
        Map<String, String> typed = new HashMap<>();
        typed.put("moment", measure.moment().name());
        typed.put("quantity", measure.title());
        typed.put("value", Figures.typed(measure.value()));
        typed.put("unit", measure.unit());
        typed.put("plus_minus", Figures.typed(measure.plusMinus()));
        typed.put("method", measure.method());
        typed.put("temperature_c", Figures.typed(measure.temperatureC()));
        typed.put("humidity_pct", Figures.typed(measure.humidityPct()));
        typed.put("hand", measure.hand());
        return Typed.known(typed);
    }
}
