package afterlength.start.document;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as they are printed: four decimals at most, no exponent, no trailing zeros, no minus before zero. */
public final class Figure {
    /** Finer than any measure of the bench (0.01 mm), so that nothing is lost and nothing is pretended. */
    private static final int DECIMALS = 4;

    /** Beyond these a plain number is a row of zeros; nothing a workshop measures comes near. */
    private static final double LONGEST_PLAIN = 1e15;

    private Figure() {}

    public static BigDecimal rounded(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalStateException("an answer holds " + value + ", which is not a number that can be printed");
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    }

    /** A measure inside a sentence, to the hundredth, as the bench reads it. */
    public static String spoken(double value) {
        return BigDecimal.valueOf(value)
                .setScale(2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** A bound inside a sentence. */
    static String bound(double value) {
        return rounded(value).toPlainString();
    }

    /** A value for a problem, as short as it was typed: 42, not 42.0. */
    static Number inProblem(double value) {
        return Math.abs(value) < LONGEST_PLAIN ? new BigDecimal(given(value)) : value;
    }

    /** A value inside a sentence, exactly as it was given; whatever it is. */
    static String given(double value) {
        if (value == 0) {
            return "0";
        }
        if (!(Math.abs(value) < LONGEST_PLAIN)) {
            return Double.toString(value);
        }
        BigDecimal exact = BigDecimal.valueOf(value).stripTrailingZeros();
        return exact.scale() > 15 ? Double.toString(value) : exact.toPlainString();
    }
}
