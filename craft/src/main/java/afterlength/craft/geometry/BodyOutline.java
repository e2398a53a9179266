package afterlength.craft.geometry;

/**
 * The edge of the body: six curves and two short corner ends on the treble side, and their mirror image. Each bout touches its
 * asked half width with a tangent along the instrument, so the widths are met exactly. Left out: the button, the fullness of
 * particular models, and the small differences between the sides that every real instrument has.
 */
public final class BodyOutline {
    /** Places of the widest and narrowest levels as shares of the length; common practice. */
    private static final double UPPER_LEVEL = 0.196;

    private static final double LOWER_LEVEL = 0.794;
    /** Narrowest level as a share of the way from upper to lower corner. */
    private static final double MIDDLE_LEVEL = 0.475;

    /** Directions of the two corner ends, in degrees. */
    private static final double UPPER_END_DEG = 122;

    private static final double LOWER_END_DEG = 60;

    private final BodyShape body;

    private BodyOutline(BodyShape body) {
        this.body = body;
    }

    /** The closed edge of the plate, starting at the upper edge on the centre line and running down the treble side. */
    public static Curve of(BodyShape body) {
        return new BodyOutline(body).trebleHalf().withMirrorImage();
    }

    private Curve trebleHalf() {
        CurvePen pen = CurvePen.at(Point.of(0, 0), 0);
        drawUpperBout(pen);
        drawMiddleBout(pen);
        drawLowerBout(pen);
        return pen.lift();
    }

    private void drawUpperBout(CurvePen pen) {
        Point widest = Point.of(body.upperWidth_mm() / 2, body.length_mm() * UPPER_LEVEL);
        pen.curveTo(widest, 90, 0.47, 0.40);
        pen.curveTo(endOf(body.upperCorner(), UPPER_END_DEG, -1), 58, 0.46, 0.42);
        pen.lineTo(endOf(body.upperCorner(), UPPER_END_DEG, 1));
    }

    private void drawMiddleBout(CurvePen pen) {
        double between_mm = body.lowerCorner().y_mm() - body.upperCorner().y_mm();
        Point narrowest = Point.of(body.middleWidth_mm() / 2, body.upperCorner().y_mm() + between_mm * MIDDLE_LEVEL);
        pen.turn(186).curveTo(narrowest, 90, 0.36, 0.60);
        pen.curveTo(endOf(body.lowerCorner(), LOWER_END_DEG, -1), -10, 0.56, 0.36);
        pen.lineTo(endOf(body.lowerCorner(), LOWER_END_DEG, 1));
    }

    private void drawLowerBout(CurvePen pen) {
        Point widest = Point.of(body.lowerWidth_mm() / 2, body.length_mm() * LOWER_LEVEL);
        pen.turn(118).curveTo(widest, 90, 0.46, 0.50);
        pen.curveTo(Point.of(0, body.length_mm()), 180, 0.43, 0.44);
    }

    private Point endOf(Point middle, double direction_deg, int sign) {
        double half_mm = sign * body.cornerWidth_mm() / 2;
        double direction = Math.toRadians(direction_deg);
        return middle.plus(half_mm * Math.cos(direction), half_mm * Math.sin(direction));
    }
}
