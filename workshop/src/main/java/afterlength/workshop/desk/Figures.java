package afterlength.workshop.desk;

import afterlength.craft.units.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** How numbers are written for people: rounding and units in one place, never in a template. */
public final class Figures {
    private Figures() {}

    /** With a fixed number of decimals and a true minus sign; a rounded zero has no sign. */
    public static String fixed(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        String text = rounded.abs().toPlainString();
        return rounded.signum() < 0 ? "−" + text : text;
    }

    /** As short as the value allows: 42, 5.5, 0.333. */
    public static String plain(double value) {
        BigDecimal rounded =
                BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
        String text = rounded.abs().toPlainString();
        return rounded.signum() < 0 ? "−" + text : text;
    }

    /** For a form field: a point, a plain hyphen-minus, nothing lost. */
    public static String typed(@Nullable Double value) {
        return value == null
                ? ""
                : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    /** To a tenth, as far as a rule or a knife can follow. */
    public static String tenths(double value) {
        return fixed(value, 1);
    }

    public static String tenths(Length length) {
        return fixed(length.mm(), 1);
    }

    /** To a hundredth, for thin things such as strings. */
    public static String hundredths(double value) {
        return fixed(value, 2);
    }

    public static String whole(double value) {
        return fixed(value, 0);
    }

    public static String mm(Length length) {
        return mm(length.mm(), 1);
    }

    public static String mm(double value, int decimals) {
        return fixed(value, decimals) + " mm";
    }

    /** A value with its uncertainty; the uncertainty decides the decimals of both. */
    public static String plusMinus(double value, double plusMinus, String unit) {
        int decimals = decimals(plusMinus);
        return fixed(value, decimals) + " ± " + fixed(plusMinus, decimals) + (unit.isEmpty() ? "" : " " + unit);
    }

    /** How many decimals a value with this uncertainty is written with. */
    public static int decimals(double plusMinus) {
        return plusMinus >= 10 ? 0 : plusMinus >= 0.095 || plusMinus == 0 ? 1 : 2;
    }

    /** Minutes as hours and minutes: 45 min, 1 h 30. */
    public static String duration(long minutes) {
        if (minutes < 60) {
            return minutes + " min";
        }
        return minutes % 60 == 0 ? minutes / 60 + " h" : "%d h %02d".formatted(minutes / 60, minutes % 60);
    }

    public static String range(String low, String high) {
        return low.equals(high) ? low : low + " – " + high;
    }
}
