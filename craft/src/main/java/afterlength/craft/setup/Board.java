package afterlength.craft.setup;

import org.jspecify.annotations.Nullable;

/**
 * The fingerboard. Across, its surface is a circular arc whose crown lies on the board line at the nut and at the end; between
 * them the radius changes evenly when two radii are given. Along a string the scoop is a parabola, zero at both ends.
 *
 * @param length_mm from the nut to the end of the board
 * @param radius_mm radius of the surface at the end
 * @param radiusNut_mm radius at the nut, or null when it is the same
 * @param scoop_mm depth of the scoop at mid-length under the outer strings, or null when it was not measured
 */
public record Board(
        double length_mm,
        double radius_mm,
        @Nullable Double radiusNut_mm,
        @Nullable BassTreble scoop_mm) {

    /** A board of one radius whose scoop was not measured. */
    public static Board ofOneRadius(double length_mm, double radius_mm) {
        return new Board(length_mm, radius_mm, null, null);
    }

    public Board withScoop(BassTreble scoop_mm) {
        return new Board(length_mm, radius_mm, radiusNut_mm, scoop_mm);
    }

    public double radiusAtNut_mm() {
        return radiusNut_mm == null ? radius_mm : radiusNut_mm;
    }

    double radiusAt_mm(double x_mm) {
        return radiusAtNut_mm() + (radius_mm - radiusAtNut_mm()) * x_mm / length_mm;
    }

    /** Height of the surface under one string, at x between nut and board end. */
    double surface_mm(double x_mm, double y_mm, double scoopOfString_mm) {
        double parabola = 4 * x_mm * (length_mm - x_mm) / (length_mm * length_mm);
        return BoardArc.height_mm(radiusAt_mm(x_mm), y_mm) - scoopOfString_mm * parabola;
    }

    double scoopOfString_mm(int string, int count) {
        return scoop_mm == null ? 0 : scoop_mm.ofString_mm(string, count);
    }
}
