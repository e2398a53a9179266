package afterlength.craft.geometry;

import java.util.List;
import java.util.stream.Stream;

/**
 * Four pegs seen from the front, the lowest string's nearest the nut on the bass side, then crossing over. Each is one closed
 * silhouette: shank through the pegbox, collar, neck and thumb piece.
 */
public final class Pegs {
    private static final double DRAWN_LENGTH = 106;
    private static final double DRAWN_NUT = 24;

    /** A peg on the treble side at level 0, and the cheek it stands out of 11 units from the centre line. */
    private static final Curve DRAWN = drawn();

    private Pegs() {}

    public static List<Curve> of(InstrumentShape instrument) {
        return Stream.of(Point.of(-1, -15), Point.of(1, -26.5), Point.of(-1, -39), Point.of(1, -51))
                .map(place -> peg(instrument, place.x_mm(), place.y_mm()))
                .toList();
    }

    /** Levels of the peg shanks below the top of the scroll's nut, in the instrument's own millimetres. */
    public static List<Double> levels_mm(InstrumentShape instrument) {
        double along = instrument.fittings().head_mm() / DRAWN_LENGTH;
        return Stream.of(-15.0, -26.5, -39.0, -51.0)
                .map(level -> level * along - instrument.fittings().neck_mm())
                .toList();
    }

    /** The stretch of each peg that lies open in the pegbox. */
    public static List<Curve> shanks(InstrumentShape instrument) {
        double across = instrument.fittings().boardNutWidth_mm() / DRAWN_NUT;
        double along = instrument.fittings().head_mm() / DRAWN_LENGTH;
        return levels_mm(instrument).stream()
                .map(level_mm -> shank(
                        level_mm,
                        (7.2 + (level_mm + instrument.fittings().neck_mm()) / along * 0.042) * across,
                        2.7 * along))
                .toList();
    }

    private static Curve shank(double level_mm, double half_mm, double radius_mm) {
        CurvePen pen =
                CurvePen.at(Point.of(0, level_mm - radius_mm), 0).lineTo(Point.of(half_mm, level_mm - radius_mm));
        pen.lineTo(Point.of(half_mm, level_mm + radius_mm)).lineTo(Point.of(0, level_mm + radius_mm));
        return pen.lift().withMirrorImage();
    }

    private static Curve peg(InstrumentShape instrument, double side, double level) {
        double across = instrument.fittings().boardNutWidth_mm() / DRAWN_NUT;
        double along = instrument.fittings().head_mm() / DRAWN_LENGTH;
        double size = Math.sqrt(across * along);
        double nut_mm = instrument.fittings().neck_mm();
        return DRAWN.moved(point -> Point.of(side * point.x_mm() * size, (point.y_mm() + level) * along - nut_mm));
    }

    private static Curve drawn() {
        CurvePen pen = CurvePen.at(Point.of(9, -3), 0).lineTo(Point.of(13.4, -3.2));
        pen.lineTo(Point.of(13.4, -4.4)).lineTo(Point.of(15.2, -4.4)).lineTo(Point.of(15.2, -2.9));
        pen.turn(12).curveTo(Point.of(18.6, -2.8), -30, 0.35, 0.3);
        pen.curveTo(Point.of(26, -6.9), 0, 0.36, 0.36).curveTo(Point.of(35.2, -1.9), 62, 0.36, 0.36);
        pen.lineTo(Point.of(36.8, -1.3)).lineTo(Point.of(36.8, 0));
        Curve upper = pen.lift();
        return upper.then(upper.moved(point -> Point.of(point.x_mm(), -point.y_mm()))
                        .reversed())
                .then(Curve.line(Point.of(9, 3), Point.of(9, -3)));
    }
}
