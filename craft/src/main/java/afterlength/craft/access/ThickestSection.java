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
 * <p>The widest ranges are bounded in a rough drawing of the hole, {@link SearchedHole.Drawn}; its deviation is taken off the section on
 * every side, and added to the bound.
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

    private final SearchedHole hole;
    private final double width;
    private final double tolerance;
    private final boolean anyWillDo;
    private final Thickest best;
    private double bound;
    private int level = FIRST_LEVEL;

    private ThickestSection(SearchedHole hole, double width, double floor, double tolerance, boolean anyWillDo) {
        this.hole = hole;
        this.width = width;
        this.tolerance = tolerance;
        this.anyWillDo = anyWillDo;
        best = new Thickest(width, floor);
        bound = hole.ceiling_mm(width + tolerance);
    }

    /**
     * The thickest section to within the tolerance; none when all are thinner than {@link #THINNEST_MM}. Looks first at a turn that was
     * good for a similar width; the answer does not depend on it, the time does.
     */
    static Optional<PlacedSection> find(SearchedHole hole, double width_mm, double tolerance_mm, double hint_deg) {
        ThickestSection section = new ThickestSection(hole, width_mm, THINNEST_MM, tolerance_mm, false);
        section.best.look(hole.turns().at(Math.toRadians(hint_deg)));
        return section.search();
    }

    /** Any section of the width that is thicker than the floor; none means that none is wider and thicker by the tolerance. */
    static Optional<PlacedSection> findThicker(
            SearchedHole hole, double width_mm, double floor_mm, double tolerance_mm) {
        return new ThickestSection(hole, width_mm, floor_mm, tolerance_mm, true).search();
    }

    private Optional<PlacedSection> search() {
        hole.turns().alongLongestEdges().forEach(best::look);
        List<Range> ranges = all();
        while (!ranges.isEmpty() && !isDone()) {
            ranges = promising(ranges);
            boolean last = isFineEnough();
            look(ranges, last ? ranges.size() : IN_VAIN);
            ranges = last ? List.of() : halved(ranges);
            level++;
        }
        if (!isDone()) {
            hole.ruleOut(width + tolerance, best.thickness_mm() + tolerance);
        }
        return best.found();
    }

    private List<Range> all() {
        List<Range> ranges = new ArrayList<>();
        for (int part = 0; part < 1 << level; part++) {
            ranges.add(new Range(part, bound));
        }
        return ranges;
    }

    private boolean isDone() {
        return anyWillDo && best.isFound();
    }

    /** Looks at the middles of the ranges until so many in a row were none the better. */
    private void look(List<Range> ranges, int most) {
        int vain = 0;
        for (int i = 0; i < ranges.size() && vain < most && !isDone(); i++) {
            boolean better = best.look(hole.turns().at(level, ranges.get(i).part));
            vain = better ? 0 : vain + 1;
        }
    }

    private double sineOfHalfRange() {
        return Math.sin(Math.PI / (2 << level));
    }

    private boolean isFineEnough() {
        return level == LAST_LEVEL || Math.max(bound, width) * sineOfHalfRange() <= tolerance;
    }

    /** Those that may hold a section thicker than the best by more than the tolerance, the highest bounds first. */
    private List<Range> promising(List<Range> ranges) {
        SearchedHole.Drawn drawn = level == FIRST_LEVEL ? hole.rough() : hole.fair();
        List<Range> promising = new ArrayList<>();
        double highest = best.thickness_mm();
        for (Range range : ranges) {
            double boundHere = isPromising(range.bound) ? bound(drawn, range.part) : 0;
            if (isPromising(boundHere)) {
                highest = Math.max(highest, boundHere);
                promising.add(new Range(range.part, boundHere));
            }
        }
        bound = Math.min(bound, highest);
        promising.sort(Comparator.comparingDouble(range -> -range.bound));
        return promising;
    }

    private boolean isPromising(double boundOfRange) {
        return boundOfRange > best.thickness_mm() + tolerance;
    }

    private List<Range> halved(List<Range> ranges) {
        List<Range> halves = new ArrayList<>();
        for (Range range : ranges) {
            if (isPromising(range.bound)) {
                halves.add(new Range(2 * range.part, range.bound));
                halves.add(new Range(2 * range.part + 1, range.bound));
            }
        }
        return halves;
    }

    /** No section wider than wanted by the tolerance is thicker at any turn of the range. */
    private double bound(SearchedHole.Drawn drawn, int part) {
        double sine = sineOfHalfRange();
        double shorter = width + tolerance - bound * sine;
        double shortest = shorter - 2 * drawn.deviation_mm();
        if (shortest <= 0) {
            return bound;
        }
        double lost = shorter * sine + 2 * drawn.deviation_mm();
        LevelBar bar =
                drawn.turns().at(level, part).thickest(shortest, Math.max(0, best.thickness_mm() + tolerance - lost));
        return Math.min(bound, bar.thickness() + lost);
    }
}
