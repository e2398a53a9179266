package afterlength.sight.measure;

/**
 * What a measured value may be off by, cause by cause, each as one standard deviation in the unit of the value: setting the
 * mark, knowing the camera from the card, height over the card, size of the print. The stated ± is twice their root sum of
 * squares, k = 2 (docs/sources.md#photo-study).
 */
public record Terms(double picking, double card, double height, double print) {
    private static final double COVERAGE_FACTOR = 2;

    public double plusMinus() {
        return COVERAGE_FACTOR * Math.sqrt(picking * picking + card * card + height * height + print * print);
    }
}
