package afterlength.craft.geometry;

/**
 * A sound-hole of the treble side: an S-shaped stem between two round eyes, wings cut off straight, and a notch on either side
 * on the line of the stop. Drawn once in our own proportions for a hole 80 units long and scaled; lies so that the inner edges
 * of the upper eyes are as far apart as asked.
 */
public final class SoundHole {
    private static final double DRAWN_LENGTH = 80;
    /** Inner edge of the upper eye in the drawing, from which the hole is placed. */
    private static final double DRAWN_EYE_EDGE = -18.1;

    private static final Point UPPER_EYE = Point.of(-14.8, -28.6);
    private static final double UPPER_RADIUS = 3.3;
    private static final Point LOWER_EYE = Point.of(17.2, 27.4);
    private static final double LOWER_RADIUS = 4.7;

    private SoundHole() {}

    /** The closed edge of the treble hole; the bass hole is its mirror image. */
    public static Curve treble(InstrumentShape instrument) {
        double factor = instrument.fittings().soundHole_mm() / DRAWN_LENGTH;
        double x_mm = instrument.fittings().eyeDistance_mm() / 2 - DRAWN_EYE_EDGE * factor;
        double y_mm = instrument.body().stop_mm();
        return drawn().moved(point -> point.scaled(factor).plus(x_mm, y_mm));
    }

    /** Centre of the treble hole's lower eye: cracks like to start near it. */
    public static Point lowerEye(InstrumentShape instrument) {
        return placed(instrument, LOWER_EYE);
    }

    /** Centre of the treble hole's upper eye. */
    public static Point upperEye(InstrumentShape instrument) {
        return placed(instrument, UPPER_EYE);
    }

    private static Point placed(InstrumentShape instrument, Point drawn) {
        double factor = instrument.fittings().soundHole_mm() / DRAWN_LENGTH;
        double x_mm = instrument.fittings().eyeDistance_mm() / 2 - DRAWN_EYE_EDGE * factor;
        return drawn.scaled(factor).plus(x_mm, instrument.body().stop_mm());
    }

    private static Curve drawn() {
        CurvePen pen = CurvePen.at(onEye(UPPER_EYE, UPPER_RADIUS, -142), -60);
        drawOuterSide(pen);
        pen.arcAround(LOWER_EYE, 254);
        drawInnerSide(pen);
        pen.arcAround(UPPER_EYE, 252);
        return pen.lift();
    }

    private static void drawOuterSide(CurvePen pen) {
        pen.curveTo(Point.of(-8.6, -40), 0, 0.38, 0.42);
        pen.curveTo(Point.of(-0.5, -28), 86, 0.44, 0.42);
        pen.curveTo(Point.of(2.8, -1.3), 78, 0.40, 0.33);
        drawNotch(pen, Point.of(2.8, 0), 1.35);
        pen.turn(78).curveTo(Point.of(6.9, 33.8), 90, 0.33, 0.33);
        pen.turn(-36).curveTo(onEye(LOWER_EYE, LOWER_RADIUS, 146), -14, 0.33, 0.33);
    }

    private static void drawInnerSide(CurvePen pen) {
        pen.turn(122).curveTo(Point.of(9.6, 40), 180, 0.38, 0.42);
        pen.curveTo(Point.of(0.3, 28), -94, 0.44, 0.42);
        pen.curveTo(Point.of(-2.8, 1.3), -102, 0.40, 0.33);
        drawNotch(pen, Point.of(-2.8, 0), -1.35);
        pen.turn(-102).curveTo(Point.of(-6.1, -34.4), -91, 0.33, 0.33);
        pen.turn(142).curveTo(onEye(UPPER_EYE, UPPER_RADIUS, -34), 168, 0.33, 0.33);
    }

    private static void drawNotch(CurvePen pen, Point side, double depth) {
        pen.lineTo(side.plus(depth, 0)).lineTo(side.plus(0.25 * Math.signum(depth), 1.3 * Math.signum(depth)));
    }

    private static Point onEye(Point centre, double radius, double direction_deg) {
        double direction = Math.toRadians(direction_deg);
        return centre.plus(radius * Math.cos(direction), radius * Math.sin(direction));
    }
}
