package afterlength.workshop.examination;

import afterlength.craft.geometry.Point;
import afterlength.workshop.desk.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * A crown traced along a template or a bridge, as the set-up reads it: across and up in millimetres, from bass to treble, across counted
 * from the middle between the two ends and up from the straight line that joins them. However the card lay, the crown comes out
 * level; traced from treble to bass, it is turned round by whoever looks at it.
 */
final class CrownPoints {
    private CrownPoints() {}

    static List<Point> of(List<Point> traced) {
        Point first = traced.get(0);
        Point last = traced.get(traced.size() - 1);
        double chord_mm = first.distanceTo_mm(last);
        if (!(chord_mm > 0)) {
            return List.of();
        }
        double cosine = (last.x_mm() - first.x_mm()) / chord_mm;
        double sine = (last.y_mm() - first.y_mm()) / chord_mm;
        List<Point> level = new ArrayList<>();
        double side = 0;
        for (Point point : traced) {
            double x = point.x_mm() - first.x_mm();
            double y = point.y_mm() - first.y_mm();
            double up_mm = x * sine - y * cosine;
            side += up_mm;
            level.add(Point.of(x * cosine + y * sine - chord_mm / 2, up_mm));
        }
        double upwards = side < 0 ? -1 : 1;
        return level.stream()
                .map(point -> Point.of(point.x_mm(), upwards * point.y_mm()))
                .toList();
    }

    /** One point a line, parted by a semicolon, to a hundredth of a millimetre. */
    static String text(List<Point> traced) {
        StringBuilder text = new StringBuilder("across_mm; up_mm\n");
        of(traced)
                .forEach(point -> text.append(number(point.x_mm()))
                        .append("; ")
                        .append(number(point.y_mm()))
                        .append('\n'));
        return text.toString();
    }

    private static String number(double value) {
        return Figures.typed(Math.round(value * 100) / 100.0);
    }
}
