package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How each string can be played alone, over strings × stops × bow distances × forces, neighbours open. Left out of the cells are
 * stops beyond the end of the board, stops between bow and bridge, places farther out than the axes
 * say, and outer strings while the waist is not measured.
 */
public record BowMap(BowMapAxes axes, List<String> names, List<BowCell> cells, List<Caveat> caveats)
        implements BowMapAnswer {
    public BowMap {
        names = List.copyOf(names);
        cells = List.copyOf(cells);
        caveats = List.copyOf(caveats);
    }

    public static BowMapAnswer of(BridgeShape shape, BowMapAxes axes) {
        List<Problem> problems = BowMapChecks.problems(shape.inputs(), axes);
        return problems.isEmpty() ? drawn(shape, axes) : new BowRefused(problems);
    }

    private static BowMap drawn(BridgeShape shape, BowMapAxes axes) {
        BridgeInputs inputs = shape.inputs();
        StringRun[] runs = StringRun.all(shape);
        BowContact contact = new BowContact(inputs, runs);
        List<BowCell> cells = new ArrayList<>();
        for (Played played : BowSurvey.places(inputs, axes, runs)) {
            BowLimits limits = contact.limits(played);
            if (limits.hasBoth()) {
                cells.add(BowCell.of(played, limits));
            }
        }
        List<String> names = shape.strings().stream().map(SeatedString::name).toList();
        double farthest_mm = Collections.max(axes.distances_mm());
        return new BowMap(axes, names, cells, BowCaveats.list(inputs, true, farthest_mm));
    }

    /** The place with the least room; empty only when no place on the map can be played at all. */
    public Optional<BowCell> findTightest() {
        return cells.stream().min(Comparator.comparingDouble(BowCell::opening_deg));
    }

    /** Where this string has the least room. */
    public Optional<BowCell> findTightest(int string) {
        return cells.stream()
                .filter(cell -> cell.string() == string)
                .min(Comparator.comparingDouble(BowCell::opening_deg));
    }

    /** Where this string meets its neighbours with the least force. */
    public Optional<BowCell> findEarliestMeeting(int string) {
        return cells.stream()
                .filter(cell -> cell.string() == string && !Double.isNaN(cell.meets_N()))
                .min(Comparator.comparingDouble(BowCell::meets_N));
    }
}
