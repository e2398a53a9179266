package afterlength.craft.geometry;

/**
 * Neck, board, bridge, tailpiece and string from the bass side, on the axes of {@link BodySide}. The line of the board rises so
 * that, prolonged to the bridge, it lies six sevenths of the bridge's height above the belly's crest.
 */
public final class NeckSide {
    private static final double PROJECTION = 6.0 / 7;

    private final InstrumentShape instrument;
    private final double size;
    private final double crest_mm;
    private final double rib_mm;
    private final double overstand_mm;

    private NeckSide(InstrumentShape instrument) {
        this.instrument = instrument;
        this.size = instrument.stoutness();
        this.crest_mm = BodySide.of(instrument).crest_mm();
        this.rib_mm = instrument.fittings().ribHeight_mm();
        this.overstand_mm = 10 * size;
    }

    public static NeckSide of(InstrumentShape instrument) {
        return new NeckSide(instrument);
    }

    /** Lower face of the board at a level along the instrument: the straight line from the body's edge to the projection. */
    private double boardLine_mm(double y_mm) {
        double atBridge_mm = crest_mm + instrument.fittings().bridgeHeight_mm() * PROJECTION - 5 * size;
        double slope = (atBridge_mm - overstand_mm) / instrument.body().stop_mm();
        return overstand_mm + slope * y_mm;
    }

    /** A curve of {@link HeadSide}, brought to its place on this neck and leaned back with it. */
    public Curve onNeck(Curve head) {
        return head.moved(this::onNeck);
    }

    private Point onNeck(Point ofHead) {
        double lean = Math.toRadians(-tilt_deg());
        double x_mm = ofHead.x_mm() * Math.cos(lean) - ofHead.y_mm() * Math.sin(lean);
        double y_mm = ofHead.x_mm() * Math.sin(lean) + ofHead.y_mm() * Math.cos(lean);
        return nut().plus(x_mm, y_mm);
    }

    private Point nut() {
        double y_mm = -instrument.fittings().neck_mm();
        return Point.of(boardLine_mm(y_mm) + 5 * size, y_mm);
    }

    /** How far the board leans from the line of the body. */
    private double tilt_deg() {
        return Math.toDegrees(Math.atan(boardLine_mm(1) - boardLine_mm(0)));
    }

    public Curve board() {
        double end_mm =
                instrument.fittings().boardLength_mm() - instrument.fittings().neck_mm();
        Point nut = nut();
        Point end = Point.of(boardLine_mm(end_mm) + 5 * size, end_mm);
        CurvePen pen = CurvePen.at(nut, 90).lineTo(end).lineTo(end.plus(-5 * size, 0));
        return pen.lineTo(nut.plus(-5 * size, 0)).lineTo(nut).lift();
    }

    /** The neck between chin and button; the board lies on it. */
    public Curve neck() {
        double up_deg = 270 - tilt_deg();
        double plate_mm = -rib_mm - 4 * size;
        double nut_mm = nut().y_mm();
        CurvePen pen = CurvePen.at(below(nut_mm, 0), up_deg - 180).lineTo(below(0, 0));
        pen.lineTo(Point.of(plate_mm, 0)).lineTo(Point.of(plate_mm, -10 * size));
        pen.turn(-20).curveTo(below(-40 * size, 15), up_deg, 0.5, 0.36);
        pen.lineTo(below(nut_mm + 30 * size, 13))
                .curveTo(onNeck(HeadSide.of(instrument).chin()), 262, 0.55, 0.3);
        return pen.lineTo(below(nut_mm, 0)).lift();
    }

    /** A point so many violin millimetres under the board. */
    private Point below(double y_mm, double depth) {
        return Point.of(boardLine_mm(y_mm) - depth * size, y_mm);
    }

    /** The bridge from its edge: upright towards the tailpiece, tapering towards the board. */
    public Curve bridge() {
        double stop_mm = instrument.body().stop_mm();
        double top_mm = crest_mm + instrument.fittings().bridgeHeight_mm();
        CurvePen pen =
                CurvePen.at(Point.of(crest_mm, stop_mm + 2.1 * size), 0).lineTo(Point.of(top_mm, stop_mm + 1.9 * size));
        pen.lineTo(Point.of(top_mm, stop_mm + 0.6 * size)).turn(185);
        pen.curveTo(Point.of(crest_mm, stop_mm - 2.1 * size), 175, 0.3, 0.3);
        return pen.lineTo(Point.of(crest_mm, stop_mm + 2.1 * size)).lift();
    }

    /** From nut over the bridge to the tailpiece's fret. */
    public Curve string() {
        double top_mm = crest_mm + instrument.fittings().bridgeHeight_mm();
        Point bridge = Point.of(top_mm, instrument.body().stop_mm() + size);
        return Curve.line(nut().plus(0.5 * size, 0), bridge).then(Curve.line(bridge, fret()));
    }

    public Curve tailpiece() {
        double saddle_mm = 9 * size;
        double end_mm = instrument.body().length_mm() - 4 * size;
        Point end = Point.of(saddle_mm, end_mm);
        Point head = fret().plus(0, -8 * size);
        CurvePen pen =
                CurvePen.at(head, 45).lineTo(head.plus(1.5 * size, 2 * size)).lineTo(end.plus(2.5 * size, -3 * size));
        pen.lineTo(end).lineTo(head.plus(-5 * size, 4 * size));
        return pen.lineTo(head).lift();
    }

    private Point fret() {
        double share = instrument.fittings().afterLength_mm()
                / (instrument.body().length_mm() - instrument.body().stop_mm());
        double top_mm = crest_mm + instrument.fittings().bridgeHeight_mm();
        double saddle_mm = 9 * size;
        return Point.of(top_mm + (saddle_mm - top_mm) * share, Tailpiece.fret_mm(instrument));
    }
}
