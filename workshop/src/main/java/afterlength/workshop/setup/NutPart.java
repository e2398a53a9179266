package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.NutSeat;
import afterlength.craft.setup.NutShape;
import afterlength.workshop.desk.Figures;

/** The nut that goes with this bridge. */
record NutPart(NutShape nut) {
    static NutPart of(BridgeShape shape) {
        return new NutPart(NutShape.of(shape));
    }

    static String place(NutSeat seat) {
        return Figures.mm(seat.y().mm(), 1);
    }

    static String clearance(NutSeat seat) {
        return Figures.mm(seat.clearance().mm(), 2);
    }

    static String before(NutSeat seat) {
        return Figures.mm(seat.heightBeforeGrooves().mm(), 2);
    }
}
