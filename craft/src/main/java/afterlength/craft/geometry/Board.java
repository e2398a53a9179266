package afterlength.craft.geometry;

/** The board from above, with the nut at its upper end, and the back of the neck that carries it. */
public final class Board {
    private Board() {}

    /** The board, closed; its lower end is slightly hollow. */
    public static Curve of(InstrumentShape instrument) {
        FittingShape fittings = instrument.fittings();
        double nut_mm = -fittings.neck_mm();
        double end_mm = nut_mm + fittings.boardLength_mm();
        double half_mm = fittings.boardEndWidth_mm() / 2;
        CurvePen pen = CurvePen.at(Point.of(0, nut_mm), 0).lineTo(Point.of(fittings.boardNutWidth_mm() / 2, nut_mm));
        pen.lineTo(Point.of(half_mm, end_mm)).turn(185).curveTo(Point.of(0, end_mm - half_mm * 0.04), 180);
        return pen.lift().withMirrorImage();
    }

    /** The nut: a strip as wide as the board above its upper end. */
    public static Curve nut(InstrumentShape instrument) {
        double top_mm = -instrument.fittings().neck_mm() - 5.5 * instrument.stoutness();
        double half_mm = instrument.fittings().boardNutWidth_mm() / 2;
        CurvePen pen = CurvePen.at(Point.of(0, top_mm), 0).lineTo(Point.of(half_mm * 0.98, top_mm));
        pen.lineTo(Point.of(half_mm, -instrument.fittings().neck_mm()));
        return pen.lineTo(Point.of(0, -instrument.fittings().neck_mm())).lift().withMirrorImage();
    }

    /** The neck from behind, as far as the body's edge: as wide as the board it carries. */
    public static Curve neckBack(InstrumentShape instrument) {
        double nut_mm = -instrument.fittings().neck_mm();
        double half_mm = instrument.fittings().boardNutWidth_mm() / 2;
        CurvePen pen = CurvePen.at(Point.of(0, nut_mm), 0).lineTo(Point.of(half_mm, nut_mm));
        pen.lineTo(Point.of(neckRootHalf_mm(instrument), 0.4)).lineTo(Point.of(0, 0.4));
        return pen.lift().withMirrorImage();
    }

    /** The edge of the heel on the treble side, running from the flank of the neck to the button. */
    public static Curve heel(InstrumentShape instrument) {
        double size = instrument.stoutness();
        CurvePen pen = CurvePen.at(Point.of(neckRootHalf_mm(instrument) * 0.93, -46 * size), 92);
        return pen.curveTo(Point.of(buttonHalf_mm(instrument), -4 * size), 92, 0.42, 0.5)
                .lift();
    }

    private static double neckRootHalf_mm(InstrumentShape instrument) {
        FittingShape fittings = instrument.fittings();
        double widening = (fittings.boardEndWidth_mm() - fittings.boardNutWidth_mm()) / fittings.boardLength_mm();
        return (fittings.boardNutWidth_mm() + widening * fittings.neck_mm()) / 2;
    }

    /** The button of the back, a little more than half a circle, standing on the upper edge. */
    public static Curve button(InstrumentShape instrument) {
        double half_mm = buttonHalf_mm(instrument);
        double top_mm = -13.2 * instrument.stoutness();
        CurvePen pen = CurvePen.at(Point.of(0, top_mm), 0).curveTo(Point.of(half_mm, top_mm + half_mm), 90);
        pen.lineTo(Point.of(half_mm, 0.4)).lineTo(Point.of(0, 0.4));
        return pen.lift().withMirrorImage();
    }

    private static double buttonHalf_mm(InstrumentShape instrument) {
        return 10.6 * instrument.stoutness();
    }
}
