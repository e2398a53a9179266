package afterlength.craft.access;

/**
 * How the grain of a cleat runs to the grain of the plate. The handbooks disagree: slantwise in docs/sources.md#petherick-1903,
 * crosswise in docs/sources.md#mayson-1909. They agree that it never runs along the crack.
 */
public enum CleatGrain {
    DIAGONAL(45),
    CROSSWISE(90);

    /** Nearer than this to the direction of the crack the grain would run along it; our own choice. */
    static final double ALONG_DEG = 20;

    private final double toPlate_deg;

    CleatGrain(double toPlate_deg) {
        this.toPlate_deg = toPlate_deg;
    }

    /** The direction of the cleat's grain: of the two to either side of the plate's the one further from the crack's. */
    double direction_deg(double plate_deg, double crack_deg) {
        double one_deg = plate_deg + toPlate_deg;
        double other_deg = plate_deg - toPlate_deg;
        double chosen_deg = apart_deg(one_deg, crack_deg) >= apart_deg(other_deg, crack_deg) ? one_deg : other_deg;
        return apart_deg(chosen_deg, crack_deg) >= ALONG_DEG
                ? chosen_deg
                : plate_deg + DIAGONAL.away(plate_deg, crack_deg);
    }

    private double away(double plate_deg, double crack_deg) {
        boolean plus = apart_deg(plate_deg + toPlate_deg, crack_deg) >= apart_deg(plate_deg - toPlate_deg, crack_deg);
        return plus ? toPlate_deg : -toPlate_deg;
    }

    /** Between two lines, 0 to 90. */
    static double apart_deg(double one_deg, double other_deg) {
        return Math.abs(Math.IEEEremainder(one_deg - other_deg, 180));
    }
}
