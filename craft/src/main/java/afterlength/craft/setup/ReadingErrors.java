package afterlength.craft.setup;

import afterlength.craft.units.Length;

/**
 * How closely the bench reads its rules, and what that does to a bridge height. The errors of single readings are taken as
 * independent and added as squares:
 *
 * <p>{@code δH² = δP² + ½(L/F·δc)² + ½((L/F - 1)·δh)²}
 *
 * <p>with projection P, board-end clearances c and nut clearances h, each of the two outer strings entering the centre line with
 * half its weight. Left out: errors of lengths and spacings, which matter far less, and the wood working itself.
 */
public record ReadingErrors(double projection_mm, double boardEndClearance_mm, double nutClearance_mm) {
    /** A rule read to half a millimetre, clearances to two tenths and one tenth. Source: docs/sources.md#setup-common-practice. */
    public static final ReadingErrors USUAL = new ReadingErrors(0.25, 0.1, 0.05);

    public Length ofBridgeHeight(BridgeInputs inputs) {
        double lever = inputs.speakingLength_mm() / inputs.board().length_mm();
        double end_mm = lever * boardEndClearance_mm;
        double nut_mm = (lever - 1) * nutClearance_mm;
        return Length.ofMm(Math.sqrt(projection_mm * projection_mm + (end_mm * end_mm + nut_mm * nut_mm) / 2));
    }
}
