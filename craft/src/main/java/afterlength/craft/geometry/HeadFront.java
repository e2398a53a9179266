package afterlength.craft.geometry;

import java.util.List;

/**
 * The head seen from the front: pegbox, throat and the ears of the scroll. Drawn for a head of 106 units and a nut 24 units wide
 * and scaled in both directions; stands above the nut of its instrument.
 */
public final class HeadFront {
    private static final double DRAWN_LENGTH = 106;
    private static final double DRAWN_NUT = 24;

    private final double across;
    private final double along;
    private final double nut_mm;

    private HeadFront(InstrumentShape instrument) {
        this.across = instrument.fittings().boardNutWidth_mm() / DRAWN_NUT;
        this.along = instrument.fittings().head_mm() / DRAWN_LENGTH;
        this.nut_mm = -instrument.fittings().neck_mm();
    }

    public static HeadFront of(InstrumentShape instrument) {
        return new HeadFront(instrument);
    }

    public Curve silhouette() {
        CurvePen pen = CurvePen.at(Point.of(0, -106), 0);
        pen.curveTo(Point.of(8.8, -96.5), 88, 0.45, 0.42).curveTo(Point.of(9.6, -91), 70, 0.3, 0.3);
        pen.turn(15).curveTo(Point.of(14.9, -84.8), 75, 0.42, 0.42);
        pen.turn(12).curveTo(Point.of(20.6, -79.2), 84, 0.45, 0.42);
        pen.lineTo(Point.of(20.4, -75.2)).turn(110).curveTo(Point.of(13.2, -66.5), 140, 0.35, 0.4);
        pen.curveTo(Point.of(9.7, -57), 90, 0.4, 0.4).curveTo(Point.of(12, 0), 88, 0.33, 0.33);
        pen.lineTo(Point.of(0, 0));
        return sized(pen.lift().withMirrorImage());
    }

    /** The open pegbox between the cheeks. */
    public Curve pegbox() {
        CurvePen pen = CurvePen.at(Point.of(0, -61), 0);
        pen.curveTo(Point.of(4.9, -56), 90)
                .curveTo(Point.of(7.6, -3), 88, 0.33, 0.33)
                .lineTo(Point.of(0, -3));
        return sized(pen.lift().withMirrorImage());
    }

    /** Edges of the turns on the treble side, and the ridge over the middle. */
    public List<Curve> turns() {
        Curve ridge = CurvePen.at(Point.of(5.4, -102.6), 96)
                .curveTo(Point.of(4.4, -65), 96, 0.33, 0.33)
                .lift();
        Curve second = CurvePen.at(Point.of(9.6, -91), 88)
                .curveTo(Point.of(8.2, -66), 112, 0.4, 0.3)
                .lift();
        Curve third = CurvePen.at(Point.of(14.9, -84.8), 84)
                .curveTo(Point.of(12.2, -66.5), 122, 0.45, 0.3)
                .lift();
        return List.of(sized(ridge), sized(second), sized(third));
    }

    /** The back of the head: one spine between two flutes, from the chin to the top. */
    public Curve spine() {
        return sized(Curve.line(Point.of(0, -105), Point.of(0, 2)));
    }

    /** The treble flute's edge on the back of the head. */
    public Curve flute() {
        CurvePen pen = CurvePen.at(Point.of(6.8, -102), 88);
        pen.curveTo(Point.of(7.6, -60), 90, 0.33, 0.33).curveTo(Point.of(9.6, -4), 86, 0.33, 0.33);
        return sized(pen.lift());
    }

    private Curve sized(Curve drawn) {
        return drawn.moved(point -> Point.of(point.x_mm() * across, point.y_mm() * along + nut_mm));
    }
}
