package afterlength.craft.setup;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** A number as it stands in a sentence: at most six figures, no exponent, no trailing zeros. */
final class PlainNumber {
    private PlainNumber() {}

    static String of(double value) {
        if (!Double.isFinite(value)) {
            return "not a number";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(6, RoundingMode.HALF_EVEN));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    static String of(double value, String unit) {
        return Double.isFinite(value) && !unit.isEmpty() ? of(value) + " " + unit : of(value);
    }
}
