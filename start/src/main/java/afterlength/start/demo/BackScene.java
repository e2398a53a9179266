package afterlength.start.demo;

import afterlength.craft.geometry.Board;
import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.HeadFront;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.Tailpiece;
import java.awt.Color;
import java.awt.geom.Path2D;

/** The back of an instrument lying on the backdrop: two-piece flamed maple, button, neck, back of the head. */
final class BackScene {
    private final DemoInstrument instrument;
    private final Canvas canvas;
    private final Plate plate;
    private final double size;

    BackScene(Canvas canvas, DemoInstrument instrument) {
        this.canvas = canvas;
        this.instrument = instrument;
        this.size = instrument.shape().stoutness();
        Maple maple =
                new Maple(instrument.noise(), instrument.flame(), instrument.flameSlope(), instrument.flameStrength());
        this.plate = new Plate(instrument, maple, true);
    }

    void paint() {
        Backdrop.paint(canvas, instrument.noise());
        Path2D neck = Shapes.area(Board.neckBack(instrument.shape()));
        canvas.shadow(Shapes.area(HeadFront.of(instrument.shape()).silhouette()), 13 * size, 16 * size, 9 * size, 0.42);
        canvas.shadow(neck, 13 * size, 16 * size, 9 * size, 0.42);
        canvas.shadow(plate.shape(), 12 * size, 15 * size, 14 * size, 0.55);
        canvas.shadow(plate.shape(), 3 * size, 4 * size, 4 * size, 0.5);
        Path2D endButton = Shapes.area(Tailpiece.endButton(instrument.shape()));
        Polished.paint(canvas, endButton, instrument.fittings(), 4 * size, instrument.noise());
        new Head(canvas, instrument).paintBack();
        paintNeck(neck);
        plate.paint(canvas);
        paintJoint();
        paintButton();
    }

    /** The neck is round, oiled rather than varnished, and dark from the hand. */
    private void paintNeck(Path2D neck) {
        double half_mm = instrument.shape().fittings().boardNutWidth_mm() * 0.62;
        Maple maple = new Maple(instrument.noise(), instrument.flame(), 0.1, instrument.flameStrength() * 0.6);
        Colour colour = new Colour();
        canvas.shade(neck, (x_mm, y_mm) -> {
            maple.colourAt(x_mm + 300, y_mm, colour);
            double across = Math.min(Math.max(x_mm / half_mm, -0.92), 0.92);
            double slope = -across / Math.sqrt(1 - across * across) * 0.7;
            colour.red *= 0.66;
            colour.green *= 0.47;
            colour.blue *= 0.30;
            return colour.rgb(Light.diffuse(slope, 0), 0.10 * Light.gloss(slope, -0.25));
        });
        for (Curve heel : new Curve[] {
            Board.heel(instrument.shape()), Board.heel(instrument.shape()).mirrored()
        }) {
            canvas.stroke(Shapes.line(heel.shifted(0.5 * size, 0)), 1.6 * size, new Color(24, 10, 4, 70));
            canvas.stroke(Shapes.line(heel), 0.6 * size, new Color(24, 10, 4, 110));
        }
        canvas.stroke(neck, 0.4 * size, new Color(24, 10, 4, 110));
    }

    private void paintJoint() {
        double length_mm = instrument.shape().body().length_mm();
        Curve joint = Curve.line(Point.of(0, 5 * size), Point.of(0, length_mm - 5 * size));
        canvas.stroke(Shapes.line(joint), 0.28 * size, new Color(34, 15, 6, 130));
    }

    private void paintButton() {
        Path2D button = Shapes.area(Board.button(instrument.shape()));
        canvas.shadow(button, 0.6 * size, -0.6 * size, 1.2 * size, 0.5);
        new Head(canvas, instrument).paintWood(button);
        canvas.stroke(button, 0.4 * size, new Color(24, 10, 4, 140));
    }
}
