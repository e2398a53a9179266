package afterlength.craft.varnish;

/** Short, medium or long – words that mean nothing without the name of their scale. */
public enum OilLengthClass {
    SHORT,
    MEDIUM,
    LONG;

    static OilLengthClass of(double value, double shortBelow, double longAbove) {
        return value < shortBelow ? SHORT : value > longAbove ? LONG : MEDIUM;
    }
}
