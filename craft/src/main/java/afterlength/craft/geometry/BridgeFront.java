package afterlength.craft.geometry;

import java.util.List;

/**
 * The bridge from its flat side: two feet, waist, shoulders and crown, with plain cut-outs of our own. Stands on the line y = 0,
 * centre line x = 0, the crown up the drawing (negative y). Drawn in units of the foot spread; the height is free, because a
 * bridge is cut down from above: legs and cut-outs stay where they are.
 */
public final class BridgeFront {
    /** Crown radius as a share of the foot spread: 42 on 41 mm; common practice. */
    private static final double CROWN_RADIUS = 42.0 / 41;

    private final double width_mm;
    private final double height;
    private final double bassRise;

    private BridgeFront(double width_mm, double height_mm, double bassHigher_mm) {
        this.width_mm = width_mm;
        this.height = height_mm / width_mm;
        this.bassRise = bassHigher_mm / width_mm;
        if (!(height >= 0.62 && height <= 1.4)) {
            throw new IllegalArgumentException(
                    "bridge height %.1f mm does not go with feet %.1f mm wide; give %.1f to %.1f mm"
                            .formatted(height_mm, width_mm, width_mm * 0.62, width_mm * 1.4));
        }
    }

    /** Seen from the tailpiece, bass on the left; {@code bassHigher_mm} is what the bass shoulder stands above the treble one. */
    public static BridgeFront of(double width_mm, double height_mm, double bassHigher_mm) {
        return new BridgeFront(width_mm, height_mm, bassHigher_mm);
    }

    public Curve silhouette() {
        Curve treble = side(-bassRise / 2);
        Curve bass = side(bassRise / 2).mirrored().reversed();
        return sized(crown(bass.end(), treble.start()).then(treble).then(bass));
    }

    /** Openings inside the silhouette: the middle one and the two at the sides. */
    public List<Curve> openings() {
        Curve kidney = kidney();
        return List.of(sized(middle()), sized(kidney), sized(kidney.mirrored()));
    }

    private Curve crown(Point bass, Point treble) {
        double half_deg = Math.toDegrees(Math.asin((treble.x_mm() - bass.x_mm()) / 2 / CROWN_RADIUS));
        double tilt_deg = Math.toDegrees(Math.atan2(treble.y_mm() - bass.y_mm(), treble.x_mm() - bass.x_mm()));
        double reach = 2.0 / 3 * Math.tan(Math.toRadians(half_deg) / 2) / Math.sin(Math.toRadians(half_deg));
        return CurvePen.at(bass, tilt_deg - half_deg)
                .curveTo(treble, tilt_deg + half_deg, reach, reach)
                .lift();
    }

    /** From the end of the crown down the treble side to the middle of the arch between the feet. */
    private Curve side(double rise) {
        double sag = CROWN_RADIUS - Math.sqrt(CROWN_RADIUS * CROWN_RADIUS - 0.475 * 0.475);
        double shoulder = -(height - sag + rise);
        CurvePen pen = CurvePen.at(Point.of(0.475, shoulder), 88);
        pen.curveTo(Point.of(0.482, Math.max(-0.50, (shoulder - 0.452) / 2)), 100, 0.3, 0.3)
                .curveTo(Point.of(0.44, -0.452), 175, 0.4, 0.4);
        pen.curveTo(Point.of(0.375, -0.36), 95, 0.45, 0.4).curveTo(Point.of(0.405, -0.12), 72, 0.4, 0.35);
        pen.curveTo(Point.of(0.497, -0.032), 12, 0.40, 0.40).lineTo(Point.of(0.5, 0));
        pen.lineTo(Point.of(0.232, 0)).turn(-90).curveTo(Point.of(0.24, -0.03), -20, 0.3, 0.3);
        pen.curveTo(Point.of(0.268, -0.10), -80, 0.45, 0.40);
        return pen.curveTo(Point.of(0, -0.225), 180, 0.45, 0.30).lift();
    }

    private static Curve middle() {
        CurvePen pen = CurvePen.at(Point.of(0, -0.335), 0);
        pen.curveTo(Point.of(0.072, -0.405), -90).curveTo(Point.of(0.022, -0.50), -115, 0.4, 0.4);
        return pen.curveTo(Point.of(0, -0.575), 180, 0.45, 0.45).lift().withMirrorImage();
    }

    private static Curve kidney() {
        CurvePen pen = CurvePen.at(Point.of(0.335, -0.44), 270);
        pen.curveTo(Point.of(0.27, -0.515), 180)
                .curveTo(Point.of(0.2, -0.44), 90)
                .curveTo(Point.of(0.262, -0.368), 0);
        return pen.curveTo(Point.of(0.335, -0.44), -90).lift();
    }

    private Curve sized(Curve drawn) {
        return drawn.moved(point -> point.scaled(width_mm));
    }
}
