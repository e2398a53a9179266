package afterlength.start.demo;

import afterlength.craft.geometry.BodyOutline;
import afterlength.craft.geometry.BridgeFront;
import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.SoundHole;
import afterlength.craft.geometry.Strings;
import afterlength.craft.geometry.Tailpiece;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** The bridge from the tailpiece side, with the end of the board behind it. */
final class BridgeScene {
    private static final double OLD_HEIGHT_MM = 30;
    private static final double[] BREADTH_MM = {1.05, 0.95, 0.85, 0.6};

    private final DemoInstrument instrument;
    private final Canvas canvas =
            new Canvas(new Frame(DemoView.CLOSE.width(), DemoView.CLOSE.height(), 800, 600, 1, 0));
    private final Camera camera;
    private final BridgeFront bridge;
    private final boolean isNew;
    private final double stop_mm;
    private final double height_mm;

    private BridgeScene(DemoInstrument instrument) {
        this.instrument = instrument;
        this.isNew = instrument.isSetUpAnew();
        this.stop_mm = instrument.shape().body().stop_mm();
        this.height_mm = isNew ? instrument.shape().fittings().bridgeHeight_mm() : OLD_HEIGHT_MM;
        this.camera = new Camera(stop_mm + 270, 138, stop_mm, 14, 15.0, 800, 560);
        this.bridge = BridgeFront.of(instrument.shape().fittings().bridgeWidth_mm(), height_mm, 2.4);
    }

    static Canvas painted(DemoInstrument instrument) {
        BridgeScene scene = new BridgeScene(instrument);
        Backdrop.paint(scene.canvas, instrument.noise());
        scene.paintBelly();
        scene.paintSoundHoles();
        scene.paintBoard();
        scene.paintStrings(true);
        scene.paintBridge();
        scene.paintTailpiece();
        scene.paintStrings(false);
        return scene.canvas;
    }

    private void paintBelly() {
        Outline edge = BodyOutline.of(instrument.shape().body()).outline(1);
        Path2D body = seen(edge.points(), 0);
        canvas.shadow(body, 10, -8, 20, 0.55);
        Spruce spruce = new Spruce(instrument.seed(), 1, 0.12);
        Colour colour = new Colour();
        canvas.shade(body, (column, row) -> belly(spruce, colour, camera.onBelly(column, row)));
        for (double inset_mm : new double[] {4.3, 5.6}) {
            canvas.stroke(seen(edge.inset(inset_mm).points(), 0), 3, new Color(28, 14, 7, 190));
        }
    }

    private int belly(Spruce spruce, Colour colour, Point place) {
        double x_mm = place.x_mm();
        double y_mm = place.y_mm();
        spruce.colourAt(x_mm, y_mm, colour);
        instrument.varnish().cover(x_mm, y_mm, 40, colour);
        double slope = -x_mm / 190;
        double near = Math.exp(-Math.pow((y_mm - stop_mm) / 26, 2) - Math.pow(x_mm / 34, 2));
        double bright = Light.diffuse(slope, 0.05) * instrument.varnish().dirtAt(x_mm, y_mm, near);
        double far = Math.min(Math.max((stop_mm - y_mm) / 160, 0), 1);
        double shine = 0.30 * Light.gloss(slope, -0.30 + (y_mm - stop_mm) / 900) * colour.gloss;
        return colour.rgb(bright * (1 - 0.35 * far), shine);
    }

    private void paintSoundHoles() {
        Curve treble = SoundHole.treble(instrument.shape());
        for (Curve hole : List.of(treble, treble.mirrored())) {
            Outline edge = hole.outline(0.4);
            Path2D rim = seen(edge.points(), 0);
            canvas.fill(rim, new Color(92, 56, 27));
            Area dark = new Area(rim);
            dark.intersect(new Area(seen(edge.points(), -2.6)));
            canvas.fill(dark, new Color(18, 10, 6));
            canvas.stroke(rim, 1.5, new Color(24, 11, 4, 150));
        }
    }

    private Path2D seen(List<Point> places, double z_mm) {
        return Shapes.area(places.stream()
                .map(place -> camera.seen(place.x_mm(), place.y_mm(), z_mm))
                .toList());
    }

    /** The end of the board: a flat arch of ebony over the belly, in the shadow of its own face. */
    private void paintBoard() {
        double end_mm = instrument.shape().fittings().boardLength_mm()
                - instrument.shape().fittings().neck_mm();
        double half_mm = instrument.shape().fittings().boardEndWidth_mm() / 2;
        double top_mm = instrument.shape().fittings().bridgeHeight_mm() * 0.615;
        Path2D face = arch(end_mm, half_mm, top_mm, 5.5);
        List<Point> under = List.of(
                Point.of(-half_mm + 10, end_mm + 12),
                Point.of(half_mm + 13, end_mm + 14),
                Point.of(half_mm * 0.75 + 13, 8),
                Point.of(-half_mm * 0.75 + 10, 8));
        canvas.shadow(seen(under, 0), 0, 0, 24, 0.68);
        Point far = camera.seen(0, end_mm - 150, top_mm);
        Point near = camera.seen(0, end_mm, top_mm);
        Color light = new Color(66, 60, 56);
        Color dark = new Color(38, 33, 31);
        canvas.fill(
                boardTop(end_mm, half_mm, top_mm),
                new GradientPaint(0, (float) far.y_mm(), light, 0, (float) near.y_mm(), dark));
        canvas.fill(face, new Color(22, 18, 16));
        canvas.stroke(face, 1.6, new Color(84, 76, 70, 120));
    }

    private Path2D arch(double y_mm, double half_mm, double top_mm, double thick_mm) {
        List<Point> ring = new ArrayList<>();
        for (int i = -20; i <= 20; i++) {
            double x_mm = half_mm * i / 20;
            ring.add(camera.seen(x_mm, y_mm, top_mm - x_mm * x_mm / 84));
        }
        double low_mm = top_mm - half_mm * half_mm / 84 - thick_mm;
        for (int i = 20; i >= -20; i--) {
            double x_mm = half_mm * i / 20 * 0.97;
            ring.add(camera.seen(x_mm, y_mm, low_mm + 2.5 - 2.5 * (i / 20.0) * (i / 20.0)));
        }
        return Shapes.area(ring);
    }

    private Path2D boardTop(double end_mm, double half_mm, double top_mm) {
        List<Point> ring = new ArrayList<>();
        for (int i = -20; i <= 20; i++) {
            double x_mm = half_mm * i / 20;
            ring.add(camera.seen(x_mm, end_mm, top_mm - x_mm * x_mm / 84));
        }
        double far_mm = end_mm - 150;
        double narrow_mm = half_mm * 0.76;
        for (int i = 20; i >= -20; i--) {
            double x_mm = narrow_mm * i / 20;
            ring.add(camera.seen(x_mm, far_mm, top_mm - 10 - x_mm * x_mm / 84));
        }
        return Shapes.area(ring);
    }

    private void paintBridge() {
        double thick_mm = 4.4;
        Path2D front = standing(bridge.silhouette(), stop_mm + thick_mm / 2);
        canvas.shadow(seenShadow(), 0, 0, 16, 0.62);
        Area body = new Area(standing(bridge.silhouette(), stop_mm - 0.5));
        body.add(new Area(front));
        canvas.fill(body, isNew ? new Color(226, 188, 134) : new Color(132, 92, 52));
        Area face = new Area(front);
        for (Curve opening : bridge.openings()) {
            face.subtract(new Area(standing(opening, stop_mm + thick_mm / 2)));
        }
        for (Curve opening : bridge.openings()) {
            Path2D hole = standing(opening, stop_mm + thick_mm / 2);
            canvas.fill(hole, isNew ? new Color(142, 104, 66) : new Color(64, 40, 20));
            Area through = new Area(hole);
            through.intersect(new Area(standing(opening, stop_mm - thick_mm / 2 + 1)));
            canvas.fill(through, new Color(86, 50, 22));
        }
        paintFace(face);
        canvas.stroke(new Area(front), 1.6, new Color(46, 24, 9, 150));
        paintNotches();
    }

    /** Strings have cut their beds into the old crown; the new one is only marked. */
    private void paintNotches() {
        double depth = isNew ? 7 : 16;
        for (int i = 0; i < BREADTH_MM.length; i++) {
            double x_mm = Strings.onBridge(instrument.shape(), i).x_mm();
            Point top = camera.seen(x_mm, stop_mm + 2.2, crown_mm(x_mm));
            double half = BREADTH_MM[i] * 9;
            canvas.fill(
                    new Ellipse2D.Double(top.x_mm() - half, top.y_mm() - 12, 2 * half, 12 + depth),
                    new Color(40, 20, 8, 190));
        }
    }

    /** Maple cut on the quarter: short bright flecks across, darkened by a century or fresh from the knife. */
    private void paintFace(Shape face) {
        Noise noise = instrument.noise();
        Colour colour = new Colour();
        canvas.shade(face, (column, row) -> {
            double x = column / 15.5;
            double y = row / 15.5;
            double fleck = Math.max(0, noise.at(x * 1.1, y * 4.6) - 0.25) * 0.16;
            double pore = Math.max(0, noise.at(x * 0.9 + 40, y * 7) - 0.5) * 0.25;
            double tone = 1 + fleck - pore + 0.05 * noise.at(x / 5, y / 3);
            if (isNew) {
                colour.set(0.66 * tone, 0.455 * tone, 0.235 * tone, 0.3);
            } else {
                double stain = 0.5 + 0.5 * noise.cloud(x / 7, y / 9);
                colour.set(0.33 * tone, 0.155 * tone, 0.048 * tone, 0.3);
                colour.times(0.72 + 0.4 * stain);
            }
            return colour.rgb(0.80 + 0.16 * Math.exp(-(row - 430) / 300), 0);
        });
    }

    /** The bridge's shadow on the belly, thrown towards the camera and to the right. */
    private Shape seenShadow() {
        return Shapes.area(bridge.silhouette().points(0.4).stream()
                .map(point -> camera.seen(point.x_mm() - point.y_mm() * 0.62, stop_mm - point.y_mm() * 0.72, 0))
                .toList());
    }

    /** Head of the tailpiece in the foreground, its cord end below the picture. */
    private void paintTailpiece() {
        double fret_mm = Tailpiece.fret_mm(instrument.shape());
        Path2D shape = Shapes.area(Tailpiece.of(instrument.shape()).points(0.5).stream()
                .map(point -> camera.seen(point.x_mm(), point.y_mm(), tailHeight_mm(point.y_mm())))
                .toList());
        List<Point> below = Tailpiece.of(instrument.shape()).points(1).stream()
                .map(point -> Point.of(point.x_mm() + 12, point.y_mm() + 6))
                .toList();
        canvas.shadow(seen(below, 0), 0, 0, 26, 0.65);
        Polished.paint(canvas, shape, instrument.fittings(), 46, instrument.noise());
        double half_mm = 20;
        List<Point> fret = List.of(
                camera.seen(-half_mm, fret_mm, tailHeight_mm(fret_mm) + 0.6),
                camera.seen(half_mm, fret_mm, tailHeight_mm(fret_mm) + 0.6));
        canvas.stroke(
                Shapes.line(fret).createTransformedShape(AffineTransform.getTranslateInstance(0, 9)),
                12,
                new Color(0, 0, 0, 130));
        canvas.stroke(Shapes.line(fret), 13, new Color(46, 40, 36));
        canvas.stroke(
                Shapes.line(fret).createTransformedShape(AffineTransform.getTranslateInstance(0, -3)),
                3.5,
                new Color(116, 106, 98));
    }

    private double tailHeight_mm(double y_mm) {
        return height_mm * 0.52 - 0.11 * (y_mm - Tailpiece.fret_mm(instrument.shape()));
    }

    /** A flat drawing set upright across the instrument at a level. */
    private Path2D standing(Curve drawing, double y_mm) {
        return Shapes.area(drawing.points(0.15).stream()
                .map(point -> camera.seen(point.x_mm(), y_mm, -point.y_mm()))
                .toList());
    }

    /** Strings up to the bridge from behind, or from the bridge towards the tailpiece. */
    private void paintStrings(boolean behind) {
        for (int i = 0; i < BREADTH_MM.length; i++) {
            double x_mm = Strings.onBridge(instrument.shape(), i).x_mm();
            double top_mm = crown_mm(x_mm) - 0.3;
            Point atBridge = camera.seen(x_mm, stop_mm + (behind ? 0 : 1.2), top_mm);
            Point far = camera.seen(x_mm * 0.82, stop_mm - 170, top_mm - (isNew ? 17.5 : 12.5));
            double fret_mm = Tailpiece.fret_mm(instrument.shape());
            Point near = camera.seen(x_mm * 0.84, fret_mm, tailHeight_mm(fret_mm) + 1.2);
            double breadth = BREADTH_MM[i] * 14;
            if (behind) {
                paintString(far, atBridge, breadth * 0.62, breadth * 0.95);
            } else {
                paintString(atBridge, near, breadth, breadth * 1.3);
            }
        }
    }

    private double crown_mm(double x_mm) {
        double radius_mm = 42 * instrument.shape().fittings().bridgeWidth_mm() / 41;
        return height_mm - (radius_mm - Math.sqrt(radius_mm * radius_mm - x_mm * x_mm)) - x_mm * 0.054;
    }

    private void paintString(Point from, Point to, double thin, double thick) {
        double way = Math.max(from.distanceTo_mm(to), 1);
        double acrossX = (to.y_mm() - from.y_mm()) / way / 2;
        double acrossY = -(to.x_mm() - from.x_mm()) / way / 2;
        paintBand(from, to, acrossX, acrossY, thin, thick, 1, 0, isNew ? new Color(96, 94, 92) : new Color(70, 60, 46));
        paintBand(
                from,
                to,
                acrossX,
                acrossY,
                thin,
                thick,
                0.42,
                -0.2,
                isNew ? new Color(214, 212, 206) : new Color(142, 128, 102));
        paintWinding(from, to, acrossX, acrossY, thin);
    }

    private void paintBand(
            Point from,
            Point to,
            double acrossX,
            double acrossY,
            double thin,
            double thick,
            double share,
            double aside,
            Color colour) {
        double left = aside - share;
        double right = aside + share;
        canvas.fill(
                Shapes.area(List.of(
                        from.plus(acrossX * thin * left, acrossY * thin * left),
                        to.plus(acrossX * thick * left, acrossY * thick * left),
                        to.plus(acrossX * thick * right, acrossY * thick * right),
                        from.plus(acrossX * thin * right, acrossY * thin * right))),
                colour);
    }

    /** Fine lines across: the winding. */
    private void paintWinding(Point from, Point to, double acrossX, double acrossY, double thin) {
        Graphics2D pen = canvas.graphics();
        pen.setColor(new Color(20, 16, 12, 60));
        pen.setStroke(new BasicStroke(1f));
        int count = (int) (from.distanceTo_mm(to) / 3.2);
        for (int i = 0; i < count; i++) {
            Point at = from.towards(to, (double) i / count);
            pen.draw(Shapes.line(
                    List.of(at.plus(acrossX * thin, acrossY * thin), at.plus(-acrossX * thin, -acrossY * thin))));
        }
    }
}
