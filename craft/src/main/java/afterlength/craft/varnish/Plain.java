package afterlength.craft.varnish;

import java.math.BigDecimal;

/** A number in a sentence, without an exponent and without a tail of zeros. */
final class Plain {
    private Plain() {}

    static String number(double value) {
        return Double.isFinite(value)
                ? new BigDecimal(Double.toString(value)).stripTrailingZeros().toPlainString()
                : "no number";
    }
}
