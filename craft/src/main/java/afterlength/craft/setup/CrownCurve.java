package afterlength.craft.setup;

import java.util.List;

/** The upper edge of the wood between the two outer wood points, over the board line. */
public sealed interface CrownCurve permits CrownArc, CrownPolyline, CrownSpline {
    /** Height at y, for y between the outer wood points. */
    double height_mm(double y_mm);

    CrossPoint highest();

    /** Points for a drawing, from bass to treble, the outer wood points first and last. */
    List<CrossPoint> points(int count);
}
