package afterlength.craft.access;

import java.util.Optional;

/**
 * The last fraction of a degree: a section found to within a tolerance is turned a little to and fro, and lies at the turn where it
 * may be thickest. The range shrinks by the golden section; within it the thickness is taken to rise to one peak and fall.
 */
final class SharpTurn {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    /** Shrinks the range to less than a two-thousandth: a side then moves by less than a ten-thousandth of a millimetre. */
    private static final int STEPS = 16;

    private final Turns turns;
    private final double width;
    private PlacedSection best;

    private SharpTurn(Turns turns, PlacedSection near) {
        this.turns = turns;
        width = near.section().width_mm();
        best = near;
    }

    /** Never thinner than the section given, which must lie in this hole. */
    static PlacedSection of(Turns turns, PlacedSection near, double tolerance_mm) {
        return new SharpTurn(turns, near).sharpened(Math.toRadians(near.turn_deg()), tolerance_mm);
    }

    private PlacedSection sharpened(double turn, double tolerance_mm) {
        double halfRange = 2 * tolerance_mm / Math.max(width, best.section().thickness_mm());
        double low = turn - halfRange;
        double high = turn + halfRange;
        double lower = thickness(high - GOLDEN * (high - low));
        double upper = thickness(low + GOLDEN * (high - low));
        for (int step = 0; step < STEPS; step++) {
            if (lower > upper) {
                high = low + GOLDEN * (high - low);
                upper = lower;
                lower = thickness(high - GOLDEN * (high - low));
            } else {
                low = high - GOLDEN * (high - low);
                lower = upper;
                upper = thickness(low + GOLDEN * (high - low));
            }
        }
        return best;
    }

    private double thickness(double turn) {
        Optional<PlacedSection> here = turns.at(turn).findThickest(width);
        double thickness_mm =
                here.map(section -> section.section().thickness_mm()).orElse(0.0);
        if (thickness_mm > best.section().thickness_mm()) {
            best = here.orElseThrow();
        }
        return thickness_mm;
    }
}
