package afterlength.craft.access;

import java.util.Optional;

/**
 * How a section lies in the hole with the most air all round, and how much that is. The air is found by halving: a section with more
 * air fits nowhere where one with less does not. It is less than nothing when the section is too large; then it says how much
 * must come off each side.
 */
public record MostAir(double air_mm, PlacedSection place) {
    /** The air is found to within this. */
    private static final double CLOSE_MM = 0.01;

    /** None when not even the thinnest bar goes in. */
    static Optional<MostAir> find(HoleSearch hole, Frontier frontier, Section wanted) {
        double thinner_mm = Math.min(wanted.width_mm(), wanted.thickness_mm());
        double least_mm = (ThickestSection.THINNEST_MM - thinner_mm) / 2 + CLOSE_MM;
        double most_mm = hole.longest_mm();
        for (Section section : frontier.sections()) {
            double wider_mm = (section.width_mm() - wanted.width_mm()) / 2;
            double thicker_mm = (section.thickness_mm() - wanted.thickness_mm()) / 2;
            least_mm = Math.max(least_mm, Math.min(wider_mm, thicker_mm) - CLOSE_MM);
            most_mm = Math.min(most_mm, Math.max(wider_mm, thicker_mm) + Frontier.TOLERANCE_MM);
        }
        return between(hole, wanted, least_mm, most_mm);
    }

    private static Optional<MostAir> between(HoleSearch hole, Section wanted, double least_mm, double most_mm) {
        Optional<MostAir> best = at(hole, wanted, least_mm);
        double tooMuch_mm = most_mm;
        while (best.isPresent() && tooMuch_mm - best.get().air_mm > CLOSE_MM) {
            double middle_mm = (best.get().air_mm + tooMuch_mm) / 2;
            Optional<MostAir> found = at(hole, wanted, middle_mm);
            if (found.isPresent()) {
                best = found;
            } else {
                tooMuch_mm = middle_mm;
            }
        }
        return best;
    }

    private static Optional<MostAir> at(HoleSearch hole, Section wanted, double air_mm) {
        return hole.findPlace(wanted.withClearance(air_mm))
                .map(place -> new MostAir(air_mm, new PlacedSection(wanted, place.centre(), place.turn_deg())));
    }
}
