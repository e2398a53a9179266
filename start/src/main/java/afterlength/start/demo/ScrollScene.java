package afterlength.start.demo;

import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.HeadSide;
import afterlength.craft.geometry.Point;
import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;

/** The head from the bass side: each turn of the scroll is a hollow that climbs towards the eye. */
final class ScrollScene {
    /** Height gained by one full turn, and depth of its hollow, on a violin. */
    private static final double STEP_MM = 3.2;

    private static final double HOLLOW_MM = 2.0;
    /** Turns after which the hollow ends at the boss in the middle. */
    private static final double BOSS = 2.95;

    private static final double[] THUMB_DEG = {-58, 22, 74, -30};

    private final DemoInstrument instrument;
    private final Canvas canvas;
    private final HeadSide head;
    private final double size;

    ScrollScene(Canvas canvas, DemoInstrument instrument) {
        this.canvas = canvas;
        this.instrument = instrument;
        this.head = HeadSide.of(instrument.shape());
        this.size = instrument.shape().fittings().head_mm() / 106;
    }

    static Frame frame(DemoInstrument instrument) {
        double size = instrument.shape().fittings().head_mm() / 106;
        return Frame.close(-14 * size, -34 * size, 212 * size, 0);
    }

    void paint() {
        Backdrop.paint(canvas, instrument.noise());
        Path2D silhouette = Shapes.area(head.silhouette());
        Path2D neck = neck();
        Path2D board = board();
        canvas.shadow(silhouette, 10, 13, 9, 0.55);
        canvas.shadow(neck, 10, 13, 9, 0.5);
        canvas.shadow(board, 10, 13, 9, 0.5);
        Area whole = new Area(silhouette);
        whole.add(new Area(neck));
        paintWood(new Path2D.Double(whole), new Relief(whole, 0.24 * size, this::height_mm, 5));
        canvas.stroke(whole, 0.25, new Color(20, 8, 3, 130));
        Polished.paint(canvas, board, FittingWood.EBONY, 2 * size, instrument.noise());
        Polished.paint(canvas, nut(), FittingWood.EBONY, 1.6 * size, instrument.noise());
        paintPegs();
    }

    private Path2D neck() {
        List<Point> ring = new ArrayList<>(head.neckLines().get(2).points(0.4));
        Point end = ring.get(ring.size() - 1);
        ring.add(Point.of(-4.8 * size, end.y_mm()));
        ring.add(Point.of(-4.8 * size, 0.5 * size));
        ring.add(Point.of(0, 0));
        ring.add(Point.of(-14 * size, -6 * size));
        return Shapes.area(ring);
    }

    private Path2D nut() {
        return Shapes.area(List.of(
                Point.of(1.3 * size, -3.8 * size), Point.of(1.3 * size, 0.5 * size),
                Point.of(-4.8 * size, 0.5 * size), Point.of(-4.8 * size, -3.4 * size)));
    }

    private Path2D board() {
        double end_mm = head.neckLines().get(0).end().y_mm();
        return Shapes.area(List.of(
                Point.of(0.8 * size, 0.4 * size),
                Point.of(0.8 * size, end_mm),
                Point.of(-4.8 * size, end_mm),
                Point.of(-4.8 * size, 0.4 * size)));
    }

    /** Rounded edge, and inside the spiral a ramp that climbs one step a turn, hollowed between its edges. */
    private double height_mm(double x_mm, double y_mm, double distance_mm) {
        Point place = Point.of(x_mm, y_mm);
        double turns = head.turnsFromEdge(place);
        double way = head.wayRound(place);
        double turn = Math.max(Math.floor(turns), -1);
        double share = Math.max(turns - turn, 0);
        double begun = Math.min(Math.max(turn + way, 0) * 2.2, 1);
        // Turns from the edge and way round together grow only towards the eye: from here on it is the boss.
        double inwards = turns + way;
        if (inwards > BOSS) {
            return size * (STEP_MM * BOSS + 1.5 + 1.2 * Math.min(inwards - BOSS, 0.5));
        }
        double climbed = turn + way;
        double hollow =
                begun * HOLLOW_MM * Math.sin(Math.PI * Math.pow(share, 0.8)) / (1 + 0.35 * Math.max(climbed, 0));
        return size * (STEP_MM * climbed - hollow) + Polished.rounded(distance_mm, 2.6 * size);
    }

    private void paintWood(Path2D shape, Relief relief) {
        Maple maple = new Maple(instrument.noise(), instrument.flame() * 0.9, 0.2, 0.6);
        Colour colour = new Colour();
        canvas.shade(shape, (x_mm, y_mm) -> {
            maple.colourAt(x_mm + 300, y_mm, colour);
            double edge_mm = relief.distance_mm(x_mm, y_mm);
            instrument.varnish().cover(x_mm + 300, y_mm, edge_mm / size, colour);
            double slopeX = relief.slopeX(x_mm, y_mm) * 0.8;
            double slopeY = relief.slopeY(x_mm, y_mm) * 0.8;
            double steep = Math.min(slopeX * slopeX + slopeY * slopeY, 1);
            double bright = Light.diffuse(slopeX, slopeY) * instrument.varnish().dirtAt(x_mm, y_mm, steep);
            return colour.rgb(bright, 0.15 * Light.gloss(slopeX, slopeY) * colour.gloss);
        });
    }

    /** Pegs seen end on: a collar, and the narrow oval of the thumb piece, each turned as the last tuning left it. */
    private void paintPegs() {
        List<Curve> ends = head.pegEnds();
        for (int i = 0; i < ends.size(); i++) {
            Path2D collar = round(ends.get(i));
            canvas.shadow(collar, 4 * size, 6 * size, 4 * size, 0.6);
            Polished.paint(canvas, collar, instrument.fittings(), 1.6 * size, instrument.noise());
            Path2D thumb = thumb(ends.get(i), THUMB_DEG[i]);
            canvas.shadow(thumb, 1.2 * size, 1.6 * size, 1.4 * size, 0.6);
            Polished.paint(canvas, thumb, instrument.fittings(), 2.4 * size, instrument.noise());
        }
    }

    private Path2D round(Curve end) {
        Point middle = end.start().plus(-3.6 * size, 0);
        double radius_mm = 3.1 * size;
        Path2D collar = new Path2D.Double();
        collar.append(
                new Ellipse2D.Double(
                        middle.x_mm() - radius_mm, middle.y_mm() - radius_mm, 2 * radius_mm, 2 * radius_mm),
                false);
        return collar;
    }

    private Path2D thumb(Curve end, double turn_deg) {
        Point middle = end.start().plus(-3.6 * size, 0);
        AffineTransform turn = AffineTransform.getTranslateInstance(middle.x_mm(), middle.y_mm());
        turn.rotate(Math.toRadians(turn_deg));
        turn.scale(0.62, 1.85);
        turn.translate(-middle.x_mm(), -middle.y_mm());
        return new Path2D.Double(Shapes.area(end), turn);
    }
}
