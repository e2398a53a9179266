package afterlength.workshop.agreement;

import afterlength.craft.access.Motion;
import afterlength.craft.access.PlacedCleat;
import afterlength.craft.access.Pose;
import afterlength.craft.access.StepView;
import afterlength.workshop.paper.Anchor;
import afterlength.workshop.paper.Drawing;
import afterlength.workshop.paper.Face;
import afterlength.workshop.paper.Ink;
import afterlength.workshop.paper.Point;
import afterlength.workshop.paper.Sketch;
import afterlength.workshop.paper.Stroke;
import java.util.List;

/** Hole, crack and cleats from above, and the way in step by step from the side. */
final class AccessDrawing {
    private static final int STEPS_IN_A_ROW = 4;
    private static final Stroke EDGE = Stroke.of(Ink.INK, 0.3);
    private static final Stroke FINE = Stroke.of(Ink.FAINT, 0.2);

    private AccessDrawing() {}

    /** As the player sees the front; the section lies where it has most air. */
    static Drawing plan(AccessLook look) {
        Sketch sketch = new Sketch().area(points(look.hole().points()), EDGE, null);
        for (int i = 0; i < look.row().cleats().size(); i++) {
            PlacedCleat cleat = look.row().cleats().get(i);
            Stroke stroke =
                    look.outOfReach().contains(cleat) ? Stroke.dashed(Ink.INK, 0.25, 1, 0.8) : Stroke.of(Ink.INK, 0.25);
            sketch.area(points(cleat.outline().points()), stroke, Ink.BAND);
            sketch.words(
                    Integer.toString(i + 1),
                    point(cleat.centre()).moved(7.5, -1),
                    3,
                    Anchor.START,
                    Face.SANS,
                    Ink.FAINT);
        }
        sketch.curve(points(look.crack().points()), Stroke.of(Ink.ACCENT, 0.4));
        look.passage()
                .findPlace()
                .ifPresent(place -> sketch.area(points(place.corners()), Stroke.of(Ink.ACCENT, 0.25), null));
        return sketch.drawing(
                "Hole, crack and cleats",
                "The sound-hole with the section where it passes, the crack, and " + AccessWords.row(look.row()));
    }

    /** Poses from the side, each cut along the heading of the arm. */
    static Drawing steps(AccessLook look, List<Pose> poses) {
        double reach_mm = Math.max(look.carried().reach_mm(), 12) + 4;
        double height_mm = 2 * reach_mm + look.cavity().depth_mm() / 2;
        Sketch sketch = new Sketch();
        for (int i = 0; i < poses.size(); i++) {
            StepView view = StepView.of(look.cavity(), look.carried(), poses.get(i), reach_mm);
            double right_mm = (i % STEPS_IN_A_ROW) * (2 * reach_mm + 8);
            int row = i / STEPS_IN_A_ROW;
            double down_mm = row * height_mm;
            put(sketch, look, view, reach_mm, right_mm, down_mm);
            Point name = new Point(right_mm - reach_mm, reach_mm - down_mm);
            sketch.words(Integer.toString(i + 1), name, 4, Anchor.START, Face.SANS_STRONG, Ink.INK);
        }
        return sketch.drawing(
                "The way in, step by step", "The carried thing from the side at " + poses.size() + " poses");
    }

    static List<Pose> poses(Motion motion, AccessLook look) {
        return motion.drawn(look.carried().reach_mm(), 2 * STEPS_IN_A_ROW);
    }

    private static void put(
            Sketch sketch, AccessLook look, StepView view, double reach_mm, double right_mm, double down_mm) {
        view.plate().forEach(piece -> sketch.area(shifted(piece, right_mm, down_mm), FINE, Ink.BAND));
        view.boxes().forEach(box -> sketch.area(shifted(box, right_mm, down_mm), EDGE, null));
        double floor_mm = -look.cavity().plate_mm() - look.cavity().depth_mm() - down_mm;
        sketch.line(new Point(right_mm - reach_mm, floor_mm), new Point(right_mm + reach_mm, floor_mm), FINE);
    }

    private static List<Point> shifted(List<afterlength.craft.geometry.Point> points, double right_mm, double down_mm) {
        return points.stream()
                .map(point -> new Point(point.x_mm() + right_mm, point.y_mm() - down_mm))
                .toList();
    }

    /** The outline counts y down the instrument, paper counts it up. */
    private static List<Point> points(List<afterlength.craft.geometry.Point> points) {
        return points.stream().map(AccessDrawing::point).toList();
    }

    private static Point point(afterlength.craft.geometry.Point point) {
        return new Point(point.x_mm(), -point.y_mm());
    }
}
