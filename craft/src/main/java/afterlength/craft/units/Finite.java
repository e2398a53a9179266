package afterlength.craft.units;

/** The one check that all quantities share. */
final class Finite {
    private Finite() {}

    static void require(String quantity, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(quantity + " " + value + " " + unit + " is not a finite number");
        }
    }
}
