package afterlength.craft.access;

/**
 * How a cleat lies on the crack: with a side along it, or on its corner. The lozenge was preferred to the square in
 * docs/sources.md#petherick-1903.
 */
public enum CleatShape {
    SQUARE(0),
    LOZENGE(45);

    private final double toCrack_deg;

    CleatShape(double toCrack_deg) {
        this.toCrack_deg = toCrack_deg;
    }

    double toCrack_deg() {
        return toCrack_deg;
    }
}
