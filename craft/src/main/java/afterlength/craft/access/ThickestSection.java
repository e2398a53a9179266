package afterlength.craft.access;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The thickest section of one width that lies in the hole at any turn, by branch and bound over the turn.
 *
 * <p>A section w × t turned by no more than δ holds within it one of w − T·sin δ by t − w·sin δ that has not been turned, when T is
 * at least t. So the thickest level bar of the shorter width at the middle of a range of turns, plus w·sin δ, is a bound for
 * the whole range. Ranges without a section that is both wider and thicker than the best one by more than the tolerance are
 * dropped, the others halved.
 *
 * <p>What is left out: nothing, to within the tolerance. The curve of thickness over width may fall steeply or in a step; there
 * the tolerance is one of width, elsewhere one of thickness.
 */
final class ThickestSection {
    private static final int FIRST_LEVEL = 6;
    /** Half a turn in 2^20 parts: a bar of a metre moves less than two thousandths of a millimetre. */
    private static final int LAST_LEVEL = 20;

    /** Nothing thinner is looked for: it would be no bar. */
    static final double THINNEST_MM = 0.5;

    private static final int IN_VAIN = 4;

    /** One part of the half turn, at the level of the moment, and what no section in it is thicker than. */
    private record Range(int part, double bound) {}

    private final Turns turns;
    private final double width;
    private final double tolerance;
    private double best;
    private double bound;
    private int level = FIRST_LEVEL;
    private Optional<PlacedSection> found = Optional.empty();

    private ThickestSection(Turns turns, double width, double tolerance, double floor) {
        this.turns = turns;
        this.width = width;
        this.tolerance = tolerance;
        best = floor;
        bound = turns.longest_mm();
    }

    /** The thickest section to within the tolerance; none when all are thinner than {@link #THINNEST_MM}. */
    static Optional<PlacedSection> find(Turns turns, double width_mm, double tolerance_mm) {
        return new ThickestSection(turns, width_mm, tolerance_mm, THINNEST_MM).search(false);
    }

    /** The same, looking first at a turn that was good for a similar width; the answer does not depend on it, the time does. */
    static Optional<PlacedSection> find(Turns turns, double width_mm, double tolerance_mm, double hint_deg) {
        ThickestSection section = new ThickestSection(turns, width_mm, tolerance_mm, THINNEST_MM);
        section.look(turns.at(Math.toRadians(hint_deg)));
        return section.search(false);
    }

    /** Any section of the width that is thicker than the floor; none means that none is wider and thicker by the tolerance. */
    static Optional<PlacedSection> findThicker(Turns turns, double width_mm, double floor_mm, double tolerance_mm) {
        return new ThickestSection(turns, width_mm, tolerance_mm, floor_mm).search(true);
    }

    private Optional<PlacedSection> search(boolean anyWillDo) {
        List<Range> ranges = new ArrayList<>();
        for (int part = 0; part < 1 << level; part++) {
            ranges.add(new Range(part, bound));
        }
        turns.alongLongestEdges().forEach(this::look);
        while (!ranges.isEmpty() && width <= turns.longest_mm() && !(anyWillDo && found.isPresent())) {
            ranges = promising(ranges);
            boolean last = isFineEnough();
            look(ranges, last ? ranges.size() : IN_VAIN, anyWillDo);
            ranges = last ? List.of() : halved(ranges);
            level++;
        }
        return found;
    }

    /** Looks at the middles of the ranges until so many in a row were none the better. */
    private void look(List<Range> ranges, int most, boolean anyWillDo) {
        int vain = 0;
        for (int i = 0; i < ranges.size() && vain < most && !(anyWillDo && found.isPresent()); i++) {
            double before = best;
            look(turns.at(level, ranges.get(i).part));
            vain = best > before ? 0 : vain + 1;
        }
    }

    private double sineOfHalfRange() {
        return Math.sin(Math.PI / (2 << level));
    }

    private boolean isFineEnough() {
        double sine = sineOfHalfRange();
        return level == LAST_LEVEL || Math.max(bound, width) * sine <= tolerance;
    }

    private void look(TurnedHole hole) {
        LevelBar bar = hole.thickest(width, best);
        if (bar.isFound()) {
            best = bar.thickness();
            found = Optional.of(hole.placed(bar, width));
        }
    }

    /** Those that may hold a section thicker than the best by more than the tolerance, the highest bounds first. */
    private List<Range> promising(List<Range> ranges) {
        List<Range> promising = new ArrayList<>();
        double highest = best;
        for (Range range : ranges) {
            double boundHere = isPromising(range) ? bound(turns.at(level, range.part)) : 0;
            if (boundHere > best + tolerance) {
                highest = Math.max(highest, boundHere);
                promising.add(new Range(range.part, boundHere));
            }
        }
        bound = Math.min(bound, highest);
        promising.sort(Comparator.comparingDouble(range -> -range.bound));
        return promising;
    }

    private boolean isPromising(Range range) {
        return range.bound > best + tolerance;
    }

    private List<Range> halved(List<Range> ranges) {
        List<Range> halves = new ArrayList<>();
        for (Range range : ranges) {
            if (isPromising(range)) {
                halves.add(new Range(2 * range.part, range.bound));
                halves.add(new Range(2 * range.part + 1, range.bound));
            }
        }
        return halves;
    }

    /** No section wider than wanted by the tolerance is thicker at any turn of the range round this one. */
    private double bound(TurnedHole hole) {
        double shorter = width + tolerance - bound * sineOfHalfRange();
        double slack = Math.max(shorter, 0) * sineOfHalfRange();
        if (shorter <= 0) {
            return bound;
        }
        LevelBar bar = hole.thickest(shorter, Math.max(0, best + tolerance - slack));
        return Math.min(bound, bar.thickness() + slack);
    }
}
