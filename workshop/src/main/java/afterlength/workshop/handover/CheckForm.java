package afterlength.workshop.handover;

import afterlength.workshop.desk.Typed;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.Quantity;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads the measures of a check, several at once; a row left empty is measured another time. */
final class CheckForm {
    private static final double LARGEST = 100_000;
    private static final double SMALLEST_PLUS_MINUS = 0.001;

    private CheckForm() {}

    static List<Measure> read(Typed typed, YearCheck check, Instant now) {
        String hand = typed.required("hand", "The hand", 60);
        Double temperature_C = typed.decimal("temperature_c", "The temperature of the air", "°C", -5, 50);
        Double humidity_pct = typed.decimal("humidity_pct", "The humidity of the air", "%", 0, 100);
        List<Measure> read = new ArrayList<>();
        for (CheckRow row : check.open()) {
            Measure then = row.then();
            if (!typed.raw(value(then)).isBlank() || !typed.raw(plusMinus(then)).isBlank()) {
                read.add(measure(typed, check, then, temperature_C, humidity_pct, hand, now));
            }
        }
        if (typed.sound() && read.isEmpty()) {
            typed.note("hand", "No value was typed. Write at least one, with its ±.");
        }
        return typed.sound() ? read : List.of();
    }

    private static Measure measure(
            Typed typed,
            YearCheck check,
            Measure then,
            @Nullable Double temperature_C,
            @Nullable Double humidity_pct,
            String hand,
            Instant now) {
        Optional<Quantity> known = Quantity.findByKey(then.quantity());
        double value = typed.requiredDecimal(
                value(then),
                "The value of " + then.title(),
                then.unit(),
                known.map(Quantity::lowest).orElse(-LARGEST),
                known.map(Quantity::highest).orElse(LARGEST));
        double plusMinus = typed.requiredDecimal(
                plusMinus(then), "The ± of " + then.title(), then.unit(), SMALLEST_PLUS_MINUS, LARGEST);
        return new Measure(
                0,
                check.visit().id(),
                null,
                false,
                Moment.BEFORE,
                then.quantity(),
                value,
                then.unit(),
                Double.isNaN(plusMinus) ? 1 : plusMinus,
                then.method(),
                temperature_C,
                humidity_pct,
                now,
                hand,
                now);
    }

    static String value(Measure then) {
        return "value_" + then.id();
    }

    static String plusMinus(Measure then) {
        return "plus_minus_" + then.id();
    }
}
