package afterlength.craft.geometry;

/**
 * The measures from which the edge of a body is drawn. Widths are measured over the edges, corners are given by the middle of
 * their ends on the treble side.
 *
 * @param length_mm upper edge to lower edge on the centre line, without the button
 * @param cornerWidth_mm length of the short straight end of a corner
 * @param stop_mm upper edge to the line through the inner notches
 */
public record BodyShape(
        double length_mm,
        double upperWidth_mm,
        double middleWidth_mm,
        double lowerWidth_mm,
        Point upperCorner,
        Point lowerCorner,
        double cornerWidth_mm,
        double stop_mm) {
    public BodyShape {
        requireBetween("length", length_mm, 50, 2000);
        requireBetween("upper width", upperWidth_mm, length_mm * 0.3, length_mm * 0.7);
        requireBetween("lower width", lowerWidth_mm, upperWidth_mm, length_mm * 0.8);
        requireBetween("middle width", middleWidth_mm, upperWidth_mm * 0.4, upperWidth_mm * 0.85);
        requireBetween("upper corner y", upperCorner.y_mm(), length_mm * 0.28, length_mm * 0.45);
        requireBetween("lower corner y", lowerCorner.y_mm(), length_mm * 0.52, length_mm * 0.7);
        requireBetween("upper corner x", upperCorner.x_mm(), middleWidth_mm * 0.55, upperWidth_mm * 0.49);
        requireBetween("lower corner x", lowerCorner.x_mm(), middleWidth_mm * 0.55, lowerWidth_mm * 0.49);
        requireBetween("corner width", cornerWidth_mm, length_mm * 0.005, length_mm * 0.04);
        requireBetween("stop", stop_mm, length_mm * 0.45, length_mm * 0.65);
    }

    /**
     * Places the corners where they commonly stand for these widths: ends at 0.36 and 0.60 of the length (common practice,
     * docs/sources.md#instrument-proportions).
     */
    public static BodyShape of(
            double length_mm, double upperWidth_mm, double middleWidth_mm, double lowerWidth_mm, double stop_mm) {
        return new BodyShape(
                length_mm,
                upperWidth_mm,
                middleWidth_mm,
                lowerWidth_mm,
                Point.of(upperWidth_mm * 0.458, length_mm * 0.358),
                Point.of(lowerWidth_mm * 0.445, length_mm * 0.602),
                length_mm * 0.0172,
                stop_mm);
    }

    BodyShape scaled(double factor) {
        return new BodyShape(
                length_mm * factor,
                upperWidth_mm * factor,
                middleWidth_mm * factor,
                lowerWidth_mm * factor,
                upperCorner.scaled(factor),
                lowerCorner.scaled(factor),
                cornerWidth_mm * factor,
                stop_mm * factor);
    }

    private static void requireBetween(String measure, double value_mm, double low_mm, double high_mm) {
        // Half a micrometre of grace: scaling a shape must not push it over its own limit.
        if (!(value_mm >= low_mm - 5e-4 && value_mm <= high_mm + 5e-4)) {
            throw new IllegalArgumentException("%s %.1f mm does not make a body; give %.1f to %.1f mm"
                    .formatted(measure, value_mm, low_mm, high_mm));
        }
    }
}
