package afterlength.craft.geometry;

/** The standing bridge as the front view shows it, from straight above: a slim bar with the crown's edge along it. */
public final class BridgeAbove {
    private static final double FOOT_THICKNESS_MM = 4.3;

    private BridgeAbove() {}

    public static Curve of(InstrumentShape instrument) {
        double half_mm = instrument.fittings().bridgeWidth_mm() / 2;
        double thick_mm = FOOT_THICKNESS_MM * instrument.stoutness();
        double top_mm = -thick_mm / 2;
        CurvePen pen = CurvePen.at(Point.of(0, top_mm * 0.8), 0);
        pen.curveTo(Point.of(half_mm, top_mm), 0, 0.3, 0.3).lineTo(Point.of(half_mm, -top_mm));
        pen.lineTo(Point.of(0, -top_mm));
        return pen.lift().withMirrorImage().shifted(0, instrument.body().stop_mm());
    }

    /** The crown's edge, which the strings cross. */
    public static Curve crown(InstrumentShape instrument) {
        double half_mm = instrument.fittings().bridgeWidth_mm() * 0.475;
        double y_mm = instrument.body().stop_mm() + 1.2 * instrument.stoutness();
        return Curve.line(Point.of(-half_mm, y_mm), Point.of(half_mm, y_mm));
    }
}
