package afterlength.craft.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Places the inner strings so that the smallest clear angle over a map of the bow is as large as it can be, every inner string
 * keeping a clearance at the board end between those of the two outer ones.
 *
 * <p>A string gains room when it is raised and loses room when a neighbour is. So for any room asked for there is one lowest way of
 * reaching it ({@link EvenHeights}), and the most that can be asked for is found by halving: the best of all crowns, not a good
 * one near a first guess. Looking at the whole map each time would be slow; only the places that were ever the tightest are kept,
 * and the search is repeated until the map names no new one.
 *
 * <p>Limits that have crossed count as negative room, so that even a map with an unplayable corner is made the best of. Only the
 * heaviest bow force matters and is looked at.
 */
final class EvenPlay {
    private static final int MOST_ROUNDS = 100;

    private final BridgeInputs inputs;
    private final StringLayout layout;
    private final List<Played> places;
    private final StringRun[] lowest;
    private final double[] highest_mm;

    private EvenPlay(BridgeInputs inputs, StringLayout layout, BowMapAxes axes) {
        this.inputs = inputs;
        this.layout = layout;
        BassTreble wanted_mm = inputs.boardEndClearance_mm();
        lowest = runs(wanted_mm.smaller_mm());
        highest_mm = IntStream.range(0, layout.count())
                .mapToDouble(i -> layout.bridgeUnderside_mm(i, wanted_mm.larger_mm()))
                .toArray();
        places = BowSurvey.places(inputs, axes.heaviestOnly(), lowest);
    }

    /** The crown for inputs whose axes were checked. */
    static CrownCurve crown(BridgeInputs inputs, StringLayout layout, BowMapAxes axes) {
        return new EvenPlay(inputs, layout, axes).crown();
    }

    /** Inner strings at this clearance, outer ones at their own. */
    private StringRun[] runs(double innerClearance_mm) {
        BassTreble wanted_mm = inputs.boardEndClearance_mm();
        int last = layout.count() - 1;
        return IntStream.rangeClosed(0, last)
                .mapToObj(i -> {
                    double outer_mm = i == 0 ? wanted_mm.bass_mm() : wanted_mm.treble_mm();
                    double clearance_mm = i == 0 || i == last ? outer_mm : innerClearance_mm;
                    return StringRun.of(inputs, layout, i, layout.bridgeUnderside_mm(i, clearance_mm));
                })
                .toArray(StringRun[]::new);
    }

    private CrownCurve crown() {
        StringRun[] best = search();
        return new CrownSpline(IntStream.range(0, best.length)
                .mapToObj(i -> new CrossPoint(best[i].bridgeY_mm(), best[i].bridgeUnderside_mm() + layout.groove_mm(i)))
                .toList());
    }

    private StringRun[] search() {
        List<Played> binding = new ArrayList<>();
        StringRun[] best = lowest;
        for (int round = 0; round < MOST_ROUNDS && addTightest(binding, best); round++) {
            best = new EvenHeights(inputs, lowest, highest_mm, binding).search();
        }
        return best;
    }

    /** Adds for every string the tightest of its places; false when all of them were there already. */
    private boolean addTightest(List<Played> binding, StringRun[] runs) {
        Played[] tightest = new Played[runs.length];
        double[] least_rad = new double[runs.length];
        BowContact contact = new BowContact(inputs, runs);
        for (Played played : places) {
            int string = played.string();
            double opening_rad = contact.limits(played).opening_rad();
            if (!Double.isNaN(opening_rad) && (tightest[string] == null || opening_rad < least_rad[string])) {
                tightest[string] = played;
                least_rad[string] = opening_rad;
            }
        }
        boolean added = false;
        for (Played played : tightest) {
            if (played != null && !binding.contains(played)) {
                added |= binding.add(played);
            }
        }
        return added;
    }
}
