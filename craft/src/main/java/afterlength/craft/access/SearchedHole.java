package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import java.util.Map;
import java.util.TreeMap;

/**
 * A hole as the search over turns sees it: at every turn, drawn roughly for a first look, and with all that former searches have
 * ruled out.
 */
final class SearchedHole {
    /**
     * How far the rough outline may run from the other: some tenth of what a bar gains in the widest ranges of turns. Chosen by
     * timing; it is added to every bound, so no answer depends on it.
     */
    static final double ROUGH_MM = 0.05;

    /**
     * A drawing of the hole.
     *
     * @param deviation_mm a figure that lies in the hole lies in this drawing, too, when it is taken in by so much all round
     */
    record Drawn(Turns turns, double deviation_mm) {}

    private final Drawn fair;
    private final Drawn rough;

    /** By width: no section wider than that is thicker than this. */
    private final TreeMap<Double, Double> ceilings = new TreeMap<>();

    SearchedHole(Outline outline) {
        fair = new Drawn(new Turns(outline), 0);
        Outline simple = outline.simplified(ROUGH_MM);
        rough = simple.isSimple() ? new Drawn(new Turns(simple), ROUGH_MM) : fair;
        ceilings.put(0.0, fair.turns.longest_mm());
    }

    Turns turns() {
        return fair.turns;
    }

    Drawn fair() {
        return fair;
    }

    /** With fewer corners, where there are any to leave out. */
    Drawn rough() {
        return rough;
    }

    /** No section of this width is thicker. */
    double ceiling_mm(double width_mm) {
        return ceilings.lowerEntry(width_mm).getValue();
    }

    /** It has been proven that no section wider than this is thicker than that; nor is then any the other way round. */
    void ruleOut(double width_mm, double thickness_mm) {
        lower(width_mm, thickness_mm);
        lower(thickness_mm, width_mm);
    }

    private void lower(double width_mm, double thickness_mm) {
        ceilings.put(
                width_mm, Math.min(thickness_mm, ceilings.floorEntry(width_mm).getValue()));
        Map<Double, Double> wider = ceilings.tailMap(width_mm, false);
        wider.values().removeIf(higher_mm -> higher_mm >= thickness_mm);
    }
}
