package afterlength.start.demo;

import afterlength.craft.geometry.Board;
import afterlength.craft.geometry.BridgeAbove;
import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.HeadFront;
import afterlength.craft.geometry.Tailpiece;
import java.awt.Color;
import java.awt.geom.Path2D;

/** The front of an instrument lying on the backdrop, whole or any part of it, by the frame. */
final class FrontScene {
    private final DemoInstrument instrument;
    private final Canvas canvas;
    private final Plate plate;
    private final double size;

    FrontScene(Canvas canvas, DemoInstrument instrument) {
        this.canvas = canvas;
        this.instrument = instrument;
        this.size = instrument.shape().stoutness();
        double pixel_mm = canvas.pixel_mm();
        this.plate = new Plate(
                instrument, new Spruce(instrument.seed(), instrument.ring() * Math.sqrt(size), pixel_mm), false);
    }

    /** Frame that shows the whole instrument. */
    static Frame whole(DemoInstrument instrument) {
        double top_mm = -instrument.shape().fittings().neck_mm()
                - instrument.shape().fittings().head_mm();
        return Frame.whole(
                DemoView.FRONT,
                top_mm,
                instrument.shape().body().length_mm() + 12 * instrument.shape().stoutness());
    }

    void paint() {
        Backdrop.paint(canvas, instrument.noise());
        dropShadows();
        Polished.paint(
                canvas,
                Shapes.area(Tailpiece.endButton(instrument.shape())),
                instrument.fittings(),
                4 * size,
                instrument.noise());
        plate.paint(canvas);
        instrument.crack().paint(canvas, instrument);
        SoundHoles.paint(canvas, instrument);
        paintTail();
        paintBoard();
        new Head(canvas, instrument).paintFront();
        paintBridge();
        StringPaint.paint(canvas, instrument);
    }

    private void dropShadows() {
        Path2D head = Shapes.area(HeadFront.of(instrument.shape()).silhouette());
        Path2D board = Shapes.area(Board.of(instrument.shape()));
        canvas.shadow(head, 13 * size, 16 * size, 9 * size, 0.42);
        canvas.shadow(board, 13 * size, 16 * size, 9 * size, 0.42);
        canvas.shadow(plate.shape(), 12 * size, 15 * size, 14 * size, 0.55);
        canvas.shadow(plate.shape(), 3 * size, 4 * size, 4 * size, 0.5);
    }

    private void paintTail() {
        canvas.clip(plate.shape());
        Path2D tailpiece = Shapes.area(Tailpiece.of(instrument.shape()));
        canvas.shadow(tailpiece, 6 * size, 8 * size, 5 * size, 0.6);
        canvas.unclip();
        Polished.paint(
                canvas,
                Shapes.area(Tailpiece.saddle(instrument.shape())),
                FittingWood.EBONY,
                2.2 * size,
                instrument.noise());
        for (Curve leg : Tailpiece.cord(instrument.shape())) {
            canvas.stroke(Shapes.line(leg), 1.3 * size, new Color(38, 32, 28));
        }
        Polished.paint(canvas, tailpiece, instrument.fittings(), 7 * size, instrument.noise());
        canvas.stroke(
                Shapes.line(Tailpiece.fret(instrument.shape()).shifted(0, 0.8 * size)),
                0.9 * size,
                new Color(0, 0, 0, 120));
        canvas.stroke(Shapes.line(Tailpiece.fret(instrument.shape())), 0.9 * size, new Color(120, 104, 90));
    }

    private void paintBoard() {
        Path2D board = Shapes.area(Board.of(instrument.shape()));
        canvas.clip(plate.shape());
        canvas.shadow(board, 6 * size, 7 * size, 5 * size, 0.65);
        canvas.unclip();
        Noise noise = instrument.noise();
        double radius_mm = 42 * instrument.shape().fittings().boardEndWidth_mm() / 42.5;
        Colour colour = new Colour();
        canvas.shade(board, (x_mm, y_mm) -> {
            double streak = 1 + 0.3 * noise.at(x_mm * 1.6, y_mm * 0.05) + 0.15 * noise.at(x_mm * 0.3, y_mm * 0.02);
            colour.set(0.024 * streak, 0.020 * streak, 0.018 * streak, 1);
            double slope = -x_mm / radius_mm;
            return colour.rgb(Light.diffuse(slope, 0), 0.055 * Light.gloss(slope, -0.30) * streak);
        });
        canvas.stroke(board, 0.35 * size, new Color(0, 0, 0, 120));
    }

    private void paintBridge() {
        Path2D bridge = Shapes.area(BridgeAbove.of(instrument.shape()));
        double height = instrument.isSetUpAnew() ? 1 : 0.8;
        canvas.clip(plate.shape());
        canvas.shadow(bridge, 2 * size, 3 * size, 2.5 * size, 0.5);
        canvas.shadow(bridge, 11 * size * height, 13 * size * height, 6 * size, 0.38);
        canvas.unclip();
        boolean isNew = instrument.isSetUpAnew();
        canvas.fill(bridge, isNew ? new Color(196, 152, 96) : new Color(124, 84, 46));
        canvas.stroke(bridge, 0.35 * size, new Color(50, 26, 10, 170));
        Curve crown = BridgeAbove.crown(instrument.shape());
        canvas.stroke(
                Shapes.line(crown.shifted(0, -0.9 * size)),
                1.1 * size,
                isNew ? new Color(168, 124, 74) : new Color(98, 64, 34));
        canvas.stroke(Shapes.line(crown), 1.2 * size, isNew ? new Color(240, 206, 152) : new Color(166, 120, 72));
    }
}
