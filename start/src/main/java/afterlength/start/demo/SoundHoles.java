package afterlength.start.demo;

import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.SoundHole;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.util.List;

/** The two sound-holes: on the side away from the lamp the cut edge of the belly shows, behind it the dark. */
final class SoundHoles {
    private SoundHoles() {}

    static void paint(Canvas canvas, DemoInstrument instrument) {
        Curve treble = SoundHole.treble(instrument.shape());
        for (Curve hole : List.of(treble, treble.mirrored())) {
            paintOne(canvas, Shapes.area(hole), instrument.shape().stoutness());
        }
    }

    private static void paintOne(Canvas canvas, Path2D hole, double size) {
        // Dirt gathers round the edge.
        canvas.shadow(hole, 0.2 * size, 0.3 * size, 1.4 * size, 0.45);
        canvas.fill(hole, new Color(140, 94, 50));
        canvas.fill(within(hole, -0.30 * size, -0.36 * size), new Color(74, 44, 20));
        canvas.fill(within(hole, -0.66 * size, -0.80 * size), new Color(46, 26, 12));
        canvas.fill(within(hole, -1.0 * size, -1.2 * size), new Color(19, 10, 6));
    }

    /** The part of the hole that a copy moved towards the lamp still covers. */
    private static Shape within(Path2D hole, double right_mm, double down_mm) {
        Area seen = new Area(hole);
        seen.intersect(
                new Area(AffineTransform.getTranslateInstance(right_mm, down_mm).createTransformedShape(hole)));
        return seen;
    }
}
