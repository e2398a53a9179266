package afterlength.craft.geometry;

import java.util.ArrayList;
import java.util.List;

/** The tailpiece from above, its fret for the strings, the saddle and the end button. */
public final class Tailpiece {
    /** Widths as shares of the length; common practice. */
    private static final double HEAD_HALF = 0.186;

    private static final double TAIL_HALF = 0.098;
    /** From the upper edge of the tailpiece to its fret, as a share of the length. */
    private static final double FRET = 0.075;

    private Tailpiece() {}

    public static double fret_mm(InstrumentShape instrument) {
        return instrument.body().stop_mm() + instrument.fittings().afterLength_mm();
    }

    public static Curve of(InstrumentShape instrument) {
        double length_mm = instrument.fittings().tailpiece_mm();
        double top_mm = fret_mm(instrument) - FRET * length_mm;
        CurvePen pen = CurvePen.at(Point.of(0, 0), 0);
        pen.curveTo(Point.of(HEAD_HALF * 0.88, 0.022), 24, 0.36, 0.3);
        pen.curveTo(Point.of(HEAD_HALF, 0.07), 93, 0.35, 0.4);
        pen.curveTo(Point.of(TAIL_HALF, 0.965), 94, 0.36, 0.40);
        pen.curveTo(Point.of(TAIL_HALF * 0.6, 1), 180, 0.4, 0.4).lineTo(Point.of(0, 1));
        Curve whole = pen.lift().withMirrorImage();
        return whole.moved(point -> point.scaled(length_mm).plus(0, top_mm));
    }

    /** The fret across the tailpiece. */
    public static Curve fret(InstrumentShape instrument) {
        double half_mm = HEAD_HALF * 0.93 * instrument.fittings().tailpiece_mm();
        return Curve.line(Point.of(-half_mm, fret_mm(instrument)), Point.of(half_mm, fret_mm(instrument)));
    }

    /** The saddle let into the lower edge. */
    public static Curve saddle(InstrumentShape instrument) {
        double edge_mm = instrument.body().length_mm();
        double half_mm = 17.5 * instrument.stoutness();
        double height_mm = 6.5 * instrument.stoutness();
        CurvePen pen =
                CurvePen.at(Point.of(0, edge_mm - height_mm), 0).lineTo(Point.of(half_mm * 0.94, edge_mm - height_mm));
        pen.lineTo(Point.of(half_mm, edge_mm + 0.4)).lineTo(Point.of(0, edge_mm + 0.4));
        return pen.lift().withMirrorImage();
    }

    /** The end button, of which only the rim shows below the edge. */
    public static Curve endButton(InstrumentShape instrument) {
        double edge_mm = instrument.body().length_mm() + 1;
        double half_mm = 6.8 * instrument.stoutness();
        CurvePen pen = CurvePen.at(Point.of(0, edge_mm), 0).lineTo(Point.of(half_mm * 0.6, edge_mm));
        pen.turn(60).curveTo(Point.of(half_mm, edge_mm + half_mm * 0.75), 90);
        pen.curveTo(Point.of(0, edge_mm + half_mm * 1.5), 180, 0.5, 0.5);
        return pen.lift().withMirrorImage();
    }

    /** The two legs of the tail cord, from the tailpiece over the saddle. */
    public static List<Curve> cord(InstrumentShape instrument) {
        double end_mm = fret_mm(instrument) + (1 - FRET) * instrument.fittings().tailpiece_mm();
        double half_mm = 3.6 * instrument.stoutness();
        List<Curve> legs = new ArrayList<>();
        for (int side : new int[] {-1, 1}) {
            Point from = Point.of(side * half_mm, end_mm - 1);
            legs.add(Curve.line(from, Point.of(side * half_mm, instrument.body().length_mm() + 1)));
        }
        return legs;
    }
}
