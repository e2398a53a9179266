package afterlength.workshop.agreement;

import afterlength.craft.access.KeepOff;
import afterlength.craft.access.PlacedCleat;
import afterlength.craft.geometry.Point;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.examination.FlatSheet;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Hole, crack and cleats over the rectified photograph on which they were traced; a millimetre is a unit of the drawing. */
record OnPhotograph(FlatSheet sheet, AccessLook look) {
    /** What of the photograph stays visible round everything drawn. */
    private static final double AROUND_MM = 12;

    /** A cleat as the drawing has it. */
    record Drawn(String points, boolean beyond, double x, double y, int number) {}

    String viewBox() {
        List<Point> all = new ArrayList<>(look.hole().points());
        all.addAll(look.crack().points());
        look.row().cleats().forEach(cleat -> all.addAll(cleat.outline().points()));
        double left = all.stream().mapToDouble(Point::x_mm).min().orElse(0) - AROUND_MM;
        double top = all.stream().mapToDouble(Point::y_mm).min().orElse(0) - AROUND_MM;
        double right = all.stream().mapToDouble(Point::x_mm).max().orElse(0) + AROUND_MM;
        double bottom = all.stream().mapToDouble(Point::y_mm).max().orElse(0) + AROUND_MM;
        return number(left) + " " + number(top) + " " + number(right - left) + " " + number(bottom - top);
    }

    String hole() {
        return points(look.hole().points());
    }

    String crack() {
        return points(look.crack().points());
    }

    List<String> keepOffs() {
        return look.study().inside().keepOffs().stream()
                .map(KeepOff::outline)
                .map(outline -> points(outline.points()))
                .toList();
    }

    List<Drawn> cleats() {
        List<Drawn> drawn = new ArrayList<>();
        for (PlacedCleat cleat : look.row().cleats()) {
            drawn.add(new Drawn(
                    points(cleat.outline().points()),
                    look.outOfReach().contains(cleat),
                    cleat.centre().x_mm(),
                    cleat.centre().y_mm(),
                    drawn.size() + 1));
        }
        return drawn;
    }

    private static String points(List<Point> points) {
        return points.stream()
                .map(point -> number(point.x_mm()) + "," + number(point.y_mm()))
                .collect(Collectors.joining(" "));
    }

    static String number(double value) {
        return Figures.typed(Math.round(value * 100) / 100.0);
    }
}
