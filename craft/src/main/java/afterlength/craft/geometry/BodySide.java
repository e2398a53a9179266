package afterlength.craft.geometry;

import java.util.List;

/**
 * The instrument from its bass side, lying along y like every other view: x = 0 is the joint of belly and rib, the belly's
 * arch stands to the right (positive x), the back's to the left. Arches are single smooth curves; the neck stands at one
 * common angle.
 */
public final class BodySide {
    /** Arching height above the rib joint as a share of the body length, plate edge included; common practice. */
    private static final double ARCH = 0.045;

    private final InstrumentShape instrument;
    private final double length_mm;
    private final double rib_mm;
    private final double edge_mm;
    private final double overhang_mm;

    private BodySide(InstrumentShape instrument) {
        this.instrument = instrument;
        this.length_mm = instrument.body().length_mm();
        this.rib_mm = instrument.fittings().ribHeight_mm();
        this.edge_mm = 4 * instrument.stoutness();
        this.overhang_mm = 2.6 * instrument.stoutness();
    }

    public static BodySide of(InstrumentShape instrument) {
        return new BodySide(instrument);
    }

    public Curve ribs() {
        double top_mm = overhang_mm;
        double bottom_mm = length_mm - overhang_mm;
        CurvePen pen = CurvePen.at(Point.of(0, top_mm), 90).lineTo(Point.of(0, bottom_mm));
        pen.lineTo(Point.of(-rib_mm, bottom_mm)).lineTo(Point.of(-rib_mm, top_mm));
        return pen.lineTo(Point.of(0, top_mm)).lift();
    }

    /** Lines across the rib where corners stand: upper and lower end of the middle bout. */
    public List<Curve> corners() {
        return List.of(
                acrossAt(instrument.body().upperCorner().y_mm()),
                acrossAt(instrument.body().lowerCorner().y_mm()));
    }

    public Curve belly() {
        return plate();
    }

    public Curve back() {
        return plate().moved(point -> Point.of(-rib_mm - point.x_mm(), point.y_mm()));
    }

    /** The highest point of the belly at the line of the stop, where the bridge stands. */
    public double crest_mm() {
        return ARCH * length_mm;
    }

    private Curve plate() {
        double rise_mm = crest_mm();
        CurvePen pen = CurvePen.at(Point.of(0, 0), 0).lineTo(Point.of(edge_mm * 0.6, 0));
        pen.curveTo(Point.of(edge_mm, edge_mm * 0.5), 90).curveTo(Point.of(edge_mm, edge_mm * 2), 92, 0.3, 0.3);
        pen.curveTo(Point.of(rise_mm, length_mm * 0.48), 90, 0.28, 0.52);
        pen.curveTo(Point.of(edge_mm, length_mm - edge_mm * 2), 88, 0.52, 0.28);
        pen.curveTo(Point.of(edge_mm, length_mm - edge_mm * 0.5), 90, 0.3, 0.3);
        pen.curveTo(Point.of(edge_mm * 0.6, length_mm), 180).lineTo(Point.of(0, length_mm));
        return pen.lineTo(Point.of(0, 0)).lift();
    }

    private Curve acrossAt(double y_mm) {
        return Curve.line(Point.of(0, y_mm), Point.of(-rib_mm, y_mm));
    }
}
