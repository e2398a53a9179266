package afterlength.craft.setup;

import java.util.List;
import java.util.stream.IntStream;

/** The arc of the board across the strings: z = sqrt(R² - y²) - R, crown at z = 0; defined for |y| up to R. */
final class BoardArc {
    private BoardArc() {}

    static double height_mm(double radius_mm, double y_mm) {
        return -sagitta_mm(radius_mm, y_mm);
    }

    /** R - sqrt(R² - y²), written so that a nearly flat board (R of kilometres) keeps its digits. */
    private static double sagitta_mm(double radius_mm, double y_mm) {
        return y_mm * y_mm / (radius_mm + Math.sqrt(radius_mm * radius_mm - y_mm * y_mm));
    }

    /** Points for a drawing, evenly across; no wider than the circle itself. */
    static List<CrossPoint> points(double radius_mm, double halfWidth_mm, int count) {
        double reach_mm = Math.min(halfWidth_mm, radius_mm);
        return IntStream.range(0, count)
                .mapToDouble(i -> reach_mm * (2.0 * i / (count - 1) - 1))
                .mapToObj(y_mm -> new CrossPoint(y_mm, height_mm(radius_mm, y_mm)))
                .toList();
    }
}
