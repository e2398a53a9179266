package afterlength.start.demo;

import afterlength.craft.geometry.BridgeFront;
import afterlength.craft.geometry.Curve;
import afterlength.craft.geometry.Point;
import afterlength.craft.geometry.Strings;
import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;

/** The bridge on the belly: fresh maple, or darkened by a century and cut into by its strings. */
final class StandingBridge {
    private static final double FOOT_MM = 4.4;
    private static final double CROWN_MM = 2.7;
    private static final double PIXELS_PER_MM = 15.5;

    private final Setting setting;
    private final Canvas canvas;
    private final BridgeFront bridge;
    private final boolean isNew;
    private final double front_mm;

    StandingBridge(Setting setting) {
        this.setting = setting;
        this.canvas = setting.canvas();
        this.bridge = setting.bridge();
        this.isNew = setting.instrument().isSetUpAnew();
        this.front_mm = setting.stop_mm() + FOOT_MM / 2;
    }

    void paint() {
        canvas.shadow(shadow(), 0, 0, 16, 0.62);
        Path2D front = setting.standing(bridge.silhouette(), front_mm);
        Area body = new Area(setting.standing(bridge.silhouette(), front_mm - CROWN_MM));
        body.add(new Area(front));
        canvas.fill(body, isNew ? new Color(226, 188, 134) : new Color(132, 92, 52));
        Area face = new Area(front);
        for (Curve opening : bridge.openings()) {
            face.subtract(new Area(setting.standing(opening, front_mm)));
            paintOpening(opening);
        }
        paintFace(face);
        canvas.stroke(front, 1.6, new Color(46, 24, 9, 150));
        paintNotches();
    }

    /** Thrown on the belly towards the camera and to the right. */
    private Shape shadow() {
        return Shapes.area(bridge.silhouette().points(0.4).stream()
                .map(point -> setting.camera()
                        .seen(point.x_mm() - point.y_mm() * 0.62, setting.stop_mm() - point.y_mm() * 0.72, 0))
                .toList());
    }

    /** The lower lip of the opening, and what is seen of the belly through it. */
    private void paintOpening(Curve opening) {
        Path2D hole = setting.standing(opening, front_mm);
        canvas.fill(hole, isNew ? new Color(142, 104, 66) : new Color(64, 40, 20));
        Area through = new Area(hole);
        through.intersect(new Area(setting.standing(opening, front_mm - FOOT_MM + 1)));
        canvas.fill(through, new Color(86, 50, 22));
    }

    private void paintFace(Shape face) {
        Colour colour = new Colour();
        canvas.shade(face, (column, row) -> {
            wood(column / PIXELS_PER_MM, row / PIXELS_PER_MM, colour);
            return colour.rgb(0.80 + 0.16 * Math.exp(-(row - 430) / 300), 0);
        });
    }

    /** Maple cut on the quarter: short bright flecks across. */
    private void wood(double x_mm, double y_mm, Colour colour) {
        Noise noise = setting.instrument().noise();
        double fleck = Math.max(0, noise.at(x_mm * 1.1, y_mm * 4.6) - 0.25) * 0.16;
        double pore = Math.max(0, noise.at(x_mm * 0.9 + 40, y_mm * 7) - 0.5) * 0.25;
        double tone = 1 + fleck - pore + 0.05 * noise.at(x_mm / 5, y_mm / 3);
        if (isNew) {
            colour.set(0.66 * tone, 0.455 * tone, 0.235 * tone, 0);
        } else {
            double stained = tone * (0.92 + 0.2 * noise.cloud(x_mm / 7, y_mm / 9));
            colour.set(0.33 * stained, 0.155 * stained, 0.048 * stained, 0);
        }
    }

    /** Strings have cut their beds into the old crown; the new one is only marked. */
    private void paintNotches() {
        double depth = isNew ? 7 : 16;
        for (int i = 0; i < Strings.COUNT; i++) {
            double x_mm = Strings.onBridge(setting.instrument().shape(), i).x_mm();
            Point top = setting.camera().seen(x_mm, front_mm, setting.crown_mm(x_mm));
            double half = StringsAhead.BREADTH_MM[i] * 9;
            Shape bed = new Ellipse2D.Double(top.x_mm() - half, top.y_mm() - 12, 2 * half, 12 + depth);
            canvas.fill(bed, new Color(40, 20, 8, 190));
        }
    }
}
