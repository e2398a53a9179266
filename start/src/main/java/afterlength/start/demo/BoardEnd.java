package afterlength.start.demo;

import afterlength.craft.geometry.Point;
import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The lower end of the board over the belly: its face towards the camera, the playing surface running away, its shadow. */
final class BoardEnd {
    private static final int STEPS = 20;
    /** Twice the radius of the board across. */
    private static final double ACROSS_MM = 84;

    private static final double THICKNESS_MM = 5.5;
    /** How far the playing surface is followed, and how much it narrows and falls on that way. */
    private static final double SEEN_MM = 150;

    private static final double NARROWING = 0.76;
    private static final double FALL_MM = 10;

    private final Setting setting;
    private final double end_mm;
    private final double half_mm;
    private final double top_mm;

    BoardEnd(Setting setting) {
        this.setting = setting;
        this.end_mm = setting.fittings().boardLength_mm() - setting.fittings().neck_mm();
        this.half_mm = setting.fittings().boardEndWidth_mm() / 2;
        this.top_mm = setting.fittings().bridgeHeight_mm() * 0.615;
    }

    void paint() {
        Canvas canvas = setting.canvas();
        canvas.shadow(setting.lying(shadow(), 0), 0, 0, 24, 0.68);
        canvas.fill(surface(), fading());
        Path2D face = face();
        canvas.fill(face, new Color(22, 18, 16));
        canvas.stroke(face, 1.6, new Color(84, 76, 70, 120));
    }

    private GradientPaint fading() {
        float far = (float) setting.camera().seen(0, end_mm - SEEN_MM, top_mm).y_mm();
        float near = (float) setting.camera().seen(0, end_mm, top_mm).y_mm();
        return new GradientPaint(0, far, new Color(66, 60, 56), 0, near, new Color(38, 33, 31));
    }

    private List<Point> shadow() {
        return List.of(
                Point.of(-half_mm + 10, end_mm + 12),
                Point.of(half_mm + 13, end_mm + 14),
                Point.of(half_mm * 0.75 + 13, 8),
                Point.of(-half_mm * 0.75 + 10, 8));
    }

    private Path2D face() {
        List<Point> ring = crown(end_mm, half_mm, top_mm);
        double low_mm = top_mm - half_mm * half_mm / ACROSS_MM - THICKNESS_MM;
        for (int i = STEPS; i >= -STEPS; i--) {
            double share = (double) i / STEPS;
            ring.add(setting.camera().seen(half_mm * share * 0.97, end_mm, low_mm + 2.5 * (1 - share * share)));
        }
        return Shapes.area(ring);
    }

    private Path2D surface() {
        List<Point> ring = crown(end_mm, half_mm, top_mm);
        List<Point> far = crown(end_mm - SEEN_MM, half_mm * NARROWING, top_mm - FALL_MM);
        Collections.reverse(far);
        ring.addAll(far);
        return Shapes.area(ring);
    }

    /** The arch across the board at a level, bass side first. */
    private List<Point> crown(double y_mm, double halfWidth_mm, double height_mm) {
        List<Point> arch = new ArrayList<>();
        for (int i = -STEPS; i <= STEPS; i++) {
            double x_mm = halfWidth_mm * i / STEPS;
            arch.add(setting.camera().seen(x_mm, y_mm, height_mm - x_mm * x_mm / ACROSS_MM));
        }
        return arch;
    }
}
