package afterlength.start.demo;

import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.SoundHole;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;

/** A hairline crack that runs from the lower eye of the treble sound-hole down along the grain, and what is left of it. */
enum Crack {
    NONE,
    OPEN,
    CLOSED;

    private static final int PIECES = 90;
    private static final double LENGTH_MM = 58;

    void paint(Canvas canvas, DemoInstrument instrument) {
        List<Point> line = line(instrument);
        if (this == OPEN) {
            paintOpen(canvas, line);
        } else if (this == CLOSED) {
            paintClosed(canvas, line);
        }
    }

    /** Dirt has crept in on both sides; the edge towards the lamp throws a shadow, the other one catches light. */
    private static void paintOpen(Canvas canvas, List<Point> line) {
        canvas.stroke(Shapes.line(line.subList(0, PIECES * 4 / 5)), 2.2, new Color(30, 14, 6, 26));
        canvas.stroke(Shapes.line(line.subList(0, PIECES * 9 / 10)), 0.9, new Color(30, 14, 6, 40));
        List<Point> lit = line.stream().map(point -> point.plus(0.14, 0.03)).toList();
        paintTapering(canvas, lit, 0.11, new Color(255, 214, 150, 105));
        paintTapering(canvas, line, 0.21, new Color(20, 9, 4, 235));
    }

    private static void paintClosed(Canvas canvas, List<Point> line) {
        canvas.stroke(Shapes.line(line), 1.5, new Color(96, 48, 14, 22));
        paintTapering(canvas, line, 0.17, new Color(58, 26, 8, 120));
    }

    private static void paintTapering(Canvas canvas, List<Point> line, double breadth_mm, Color colour) {
        for (int i = 1; i < line.size(); i++) {
            double left = 1 - (double) i / line.size();
            canvas.stroke(Shapes.line(line.subList(i - 1, i + 1)), breadth_mm * (0.25 + 0.75 * left), colour);
        }
    }

    private static List<Point> line(DemoInstrument instrument) {
        double size = instrument.shape().stoutness();
        Point start = SoundHole.lowerEye(instrument.shape()).plus(1.3 * size, 4.4 * size);
        List<Point> line = new ArrayList<>();
        for (int i = 0; i < PIECES; i++) {
            double down_mm = LENGTH_MM * i / PIECES;
            double aside_mm = 0.45 * instrument.noise().at(down_mm / 14, 3.5)
                    + 0.09 * instrument.noise().at(down_mm / 1.6, 8.5);
            line.add(start.plus(aside_mm + down_mm * 0.012, down_mm));
        }
        return line;
    }
}
