package afterlength.craft.setup;

import afterlength.craft.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * The bridge to cut. Heights named <em>height</em> are over the belly, as they are marked on the blank; curves for drawing are
 * over the board line, {@code projection} lower. Heights are taken square to the board line. A bridge stands square to the edges
 * instead, to which the board line rises by some 6 to 8 degrees; measured along the bridge this changes a height by less than
 * 0.05 mm and is left out.
 *
 * @param inputs what it was drawn from
 * @param strings from bass to treble
 * @param crown the upper edge, over the board line
 */
public record BridgeShape(BridgeInputs inputs, List<SeatedString> strings, CrownCurve crown, List<Caveat> caveats)
        implements BridgeAnswer {
    public BridgeShape {
        strings = List.copyOf(strings);
        caveats = List.copyOf(caveats);
    }

    /** Height over the belly of the crown on the centre line. */
    public Length centreHeight() {
        return overBelly(crown.height_mm(0));
    }

    public Length highest() {
        return overBelly(crown.highest().z_mm());
    }

    public Length highestAtY() {
        return Length.ofMm(crown.highest().y_mm());
    }

    /** How far the heights may be off by the usual reading errors of the bench. */
    public Length heightPlusMinus() {
        return ReadingErrors.USUAL.ofBridgeHeight(inputs);
    }

    /** Ranges common for an instrument of this speaking length. */
    public Optional<CommonSetup> findCommonSetup() {
        return CommonSetup.find(inputs.speakingLength_mm());
    }

    /** Centre of the circle when the crown is one, over the board line. */
    public Optional<CrossPoint> findCrownCentre() {
        return crown instanceof CrownArc arc ? Optional.of(arc.centre()) : Optional.empty();
    }

    public List<CrossPoint> crownPoints(int count) {
        return crown.points(count);
    }

    /** The board surface at its end. */
    public List<CrossPoint> boardArcAtEnd(double halfWidth_mm, int count) {
        return BoardArc.points(inputs.board().radius_mm(), halfWidth_mm, count);
    }

    /** The board surface carried on to the bridge, for laying under the crown in a drawing. */
    public List<CrossPoint> boardArcAtBridge(double halfWidth_mm, int count) {
        return BoardArc.points(inputs.board().radiusAt_mm(inputs.speakingLength_mm()), halfWidth_mm, count);
    }

    private Length overBelly(double overBoardLine_mm) {
        return Length.ofMm(inputs.projection_mm() + overBoardLine_mm);
    }
}
