package afterlength.craft.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A number as it stands in a sentence: at most six figures, no trailing zeros, an exponent only for what no rule could measure. */
public final class PlainNumber {
    private static final double BEYOND_MEASURE = 1e12;

    private PlainNumber() {}

    public static String of(double value) {
        if (!Double.isFinite(value)) {
            return "not a number";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(6, RoundingMode.HALF_EVEN));
        if (Math.abs(value) >= BEYOND_MEASURE) {
            return rounded.stripTrailingZeros().toString();
        }
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    public static String of(double value, String unit) {
        return Double.isFinite(value) && !unit.isEmpty() ? of(value) + " " + unit : of(value);
    }
}
