package afterlength.start.document;

/**
 * What a number may be: from {@code low} to {@code high}, both included unless the low end is open.
 *
 * @param unit as printed behind the number, or empty
 * @param reason why the range ends there, as the end of a sentence, or empty
 */
public record Range(double low, boolean lowIncluded, double high, String unit, String reason) {
    /** Nearer to zero than this lies a slip of the keyboard and no measure; such numbers only breed infinities. */
    private static final double SMALLEST = 1e-9;

    public static Range between(double low, double high, String unit) {
        return new Range(low, true, high, unit, "");
    }

    /** More than nothing, up to {@code high}. */
    public static Range positive(double high, String unit) {
        return new Range(0, false, high, unit, "");
    }

    /** Any number at all: its bounds are judged elsewhere. */
    public static Range any(String unit) {
        return new Range(-Double.MAX_VALUE, true, Double.MAX_VALUE, unit, "");
    }

    public Range because(String why) {
        return new Range(low, lowIncluded, high, unit, why);
    }

    boolean contains(double value) {
        return (lowIncluded ? value >= low : value > low) && value <= high && !isSlip(value);
    }

    private static boolean isSlip(double value) {
        return value != 0 && Math.abs(value) < SMALLEST;
    }

    String refusal(String name, double value) {
        String is = name + " is " + Figure.given(value) + spacedUnit();
        if (isSlip(value)) {
            return is + ", which is nearer to zero than any measure; give 0 or a number of 1e-9 or more.";
        }
        return is + "; give "
                + (lowIncluded ? Figure.bound(low) + " to " : "more than " + Figure.bound(low) + " and at most ")
                + Figure.bound(high) + spacedUnit() + (reason.isEmpty() ? "" : ", " + reason) + ".";
    }

    private String spacedUnit() {
        return unit.isEmpty() ? "" : " " + unit;
    }
}
