package afterlength.craft.setup;

import java.util.ArrayList;
import java.util.List;

/** The edge of a template, walked along from bass to treble. */
final class TemplateEdge {
    private final List<CrossPoint> points;
    private final double[] walked_mm;

    TemplateEdge(List<CrossPoint> points) {
        this.points = points;
        walked_mm = new double[points.size()];
        for (int i = 1; i < walked_mm.length; i++) {
            walked_mm[i] = walked_mm[i - 1] + points.get(i - 1).distanceTo_mm(points.get(i));
        }
    }

    double length_mm() {
        return walked_mm[walked_mm.length - 1];
    }

    CrossPoint at(double walk_mm) {
        int right = 1;
        while (right < walked_mm.length - 1 && walked_mm[right] < walk_mm) {
            right++;
        }
        CrossPoint a = points.get(right - 1);
        CrossPoint b = points.get(right);
        double part = (walk_mm - walked_mm[right - 1]) / (walked_mm[right] - walked_mm[right - 1]);
        return a.plus(part * (b.y_mm() - a.y_mm()), part * (b.z_mm() - a.z_mm()));
    }

    /** The piece that is left when the same length is taken off at either end. */
    List<CrossPoint> between(double overhang_mm) {
        double end_mm = length_mm() - overhang_mm;
        List<CrossPoint> piece = new ArrayList<>();
        piece.add(at(overhang_mm));
        for (int i = 0; i < walked_mm.length; i++) {
            if (walked_mm[i] > overhang_mm && walked_mm[i] < end_mm) {
                piece.add(points.get(i));
            }
        }
        piece.add(at(end_mm));
        return piece;
    }
}
