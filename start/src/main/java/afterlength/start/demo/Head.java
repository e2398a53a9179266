package afterlength.start.demo;

import afterlength.craft.geometry.Board;
import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.HeadFront;
import afterlength.craft.geometry.Pegs;
import afterlength.craft.geometry.Point;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Head and pegs from the front or from behind. */
final class Head {
    private final DemoInstrument instrument;
    private final Canvas canvas;
    private final HeadFront head;
    private final double size;

    Head(Canvas canvas, DemoInstrument instrument) {
        this.canvas = canvas;
        this.instrument = instrument;
        this.head = HeadFront.of(instrument.shape());
        this.size = instrument.shape().fittings().head_mm() / 106;
    }

    void paintFront() {
        paintPegs(false);
        paintWood(Shapes.area(head.silhouette()));
        paintTurns();
        shadeThroat();
        Path2D pegbox = Shapes.area(head.pegbox());
        canvas.fill(pegbox, new Color(28, 15, 8));
        canvas.clip(pegbox);
        for (Curve shank : Pegs.shanks(instrument.shape())) {
            Polished.paint(canvas, Shapes.area(shank), instrument.fittings(), 2.2 * size, instrument.noise());
        }
        canvas.unclip();
        canvas.stroke(pegbox, 0.5 * size, new Color(30, 14, 6, 150));
        Polished.paint(
                canvas, Shapes.area(Board.nut(instrument.shape())), FittingWood.EBONY, 1.6 * size, instrument.noise());
    }

    /** The lower turns curve away under the scroll, out of the light. */
    private void shadeThroat() {
        float top_mm = (float) (head.silhouette().start().y_mm() + 31 * size);
        float bottom_mm = (float) (top_mm + 12 * size);
        Color dark = new Color(20, 9, 3, 190);
        Area throat = new Area(Shapes.area(head.silhouette()));
        throat.intersect(new Area(new Rectangle2D.Double(-30 * size, top_mm, 60 * size, 17 * size)));
        canvas.fill(throat, new GradientPaint(0, top_mm, new Color(20, 9, 3, 0), 0, bottom_mm, dark, true));
    }

    void paintBack() {
        paintPegs(true);
        paintWood(Shapes.area(head.silhouette()));
        for (Curve flute : new Curve[] {head.flute(), head.flute().mirrored()}) {
            canvas.stroke(Shapes.line(flute.shifted(0.5 * size, 0)), 0.8 * size, new Color(255, 214, 150, 70));
            canvas.stroke(Shapes.line(flute), 0.7 * size, new Color(30, 13, 5, 130));
        }
        canvas.stroke(Shapes.line(head.spine().shifted(0.7 * size, 0)), 1.4 * size, new Color(30, 13, 5, 70));
        canvas.stroke(Shapes.line(head.spine()), 0.8 * size, new Color(255, 220, 160, 80));
    }

    private void paintPegs(boolean fromBehind) {
        for (Curve peg : Pegs.of(instrument.shape())) {
            Curve seen = fromBehind ? peg.mirrored() : peg;
            Polished.paint(canvas, Shapes.area(seen), instrument.fittings(), 4.4 * size, instrument.noise());
        }
    }

    /** Varnished maple, rounded towards its edges. */
    void paintWood(Path2D shape) {
        Relief relief = new Relief(
                shape, Math.max(0.4 * size, canvas.pixel_mm()), (x_mm, y_mm, d) -> Polished.rounded(d, 5.5 * size), 3);
        Maple maple = new Maple(instrument.noise(), instrument.flame() * 0.8, 0, instrument.flameStrength() * 0.4);
        Colour colour = new Colour();
        canvas.shade(shape, (x_mm, y_mm) -> {
            maple.colourAt(x_mm + 300, y_mm, colour);
            instrument.varnish().cover(x_mm, y_mm, relief.distance_mm(x_mm, y_mm), colour);
            double slopeX = relief.slopeX(x_mm, y_mm);
            double slopeY = relief.slopeY(x_mm, y_mm);
            return colour.rgb(Light.diffuse(slopeX, slopeY), 0.16 * Light.gloss(slopeX, slopeY));
        });
    }

    /** The turns lie one over the other, the ridge in the middle on top. */
    private void paintTurns() {
        List<Curve> turns = head.turns();
        for (int i = turns.size() - 1; i >= 0; i--) {
            Path2D turn = inside(turns.get(i));
            canvas.clip(Shapes.area(head.silhouette()));
            canvas.shadow(turn, 0.7 * size, 1.2 * size, 1.6 * size, 0.75);
            canvas.unclip();
            paintWood(turn);
        }
    }

    /** What lies between an edge and its mirror image, up to the top of the head. */
    private Path2D inside(Curve edge) {
        double top_mm = head.silhouette().start().y_mm() - size;
        List<Point> ring = new ArrayList<>();
        ring.add(Point.of(edge.start().x_mm(), top_mm));
        ring.addAll(edge.points(0.5 * size));
        List<Point> other = new ArrayList<>(ring.stream().map(Point::mirrored).toList());
        Collections.reverse(other);
        ring.addAll(other);
        Area inside = new Area(Shapes.area(ring));
        inside.intersect(new Area(Shapes.area(head.silhouette())));
        return new Path2D.Double(inside);
    }
}
