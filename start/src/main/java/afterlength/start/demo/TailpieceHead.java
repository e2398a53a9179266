package afterlength.start.demo;

import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.Tailpiece;
import java.awt.Color;
import java.awt.geom.Path2D;
import java.util.List;

/** The head of the tailpiece in the foreground; its other end lies below the picture. */
final class TailpieceHead {
    private static final double FRET_HALF_MM = 20;

    private TailpieceHead() {}

    static void paint(Setting setting) {
        Curve tailpiece = Tailpiece.of(setting.instrument().shape());
        List<Point> under = tailpiece.shifted(12, 6).points(1);
        setting.canvas().shadow(setting.lying(under, 0), 0, 0, 26, 0.65);
        Path2D seen = Shapes.area(tailpiece.points(0.5).stream()
                .map(point -> setting.camera().seen(point.x_mm(), point.y_mm(), setting.tailpiece_mm(point.y_mm())))
                .toList());
        DemoInstrument instrument = setting.instrument();
        Polished.paint(setting.canvas(), seen, instrument.fittings(), 46, instrument.noise());
        paintFret(setting);
    }

    /** A bar of ebony, its lit edge above, its shadow below; breadths in pixels. */
    private static void paintFret(Setting setting) {
        double z_mm = setting.tailpiece_mm(setting.fret_mm()) + 0.6;
        Point bass = setting.camera().seen(-FRET_HALF_MM, setting.fret_mm(), z_mm);
        Point treble = setting.camera().seen(FRET_HALF_MM, setting.fret_mm(), z_mm);
        Curve fret = Curve.line(bass, treble);
        setting.canvas().stroke(Shapes.line(fret.shifted(0, 9)), 12, new Color(0, 0, 0, 130));
        setting.canvas().stroke(Shapes.line(fret), 13, new Color(46, 40, 36));
        setting.canvas().stroke(Shapes.line(fret.shifted(0, -3)), 3.5, new Color(116, 106, 98));
    }
}
