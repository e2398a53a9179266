package afterlength.craft.access;

import afterlength.craft.units.Angle;
import afterlength.craft.units.Problem;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Whether a straight bar pushed square through the plate passes the hole, and what else would.
 *
 * <p>The outline counts as exact; what it was traced with has to be added to every margin.
 *
 * @param passes with the clearance asked for
 * @param most the place with the most air on all sides, or null when not even a thin strip goes in
 * @param thickest the largest bar of the wanted width, or null when there is none
 * @param widest the largest bar of the wanted thickness, or null when there is none
 */
public record SectionPassage(
        SectionQuestion question,
        boolean passes,
        @Nullable MostAir most,
        @Nullable PlacedSection thickest,
        @Nullable PlacedSection widest,
        Frontier frontier)
        implements PassageAnswer {
    public static PassageAnswer of(SectionQuestion question) {
        List<Problem> problems = OutlineChecks.problems(question.hole(), "/outline_mm");
        return problems.isEmpty() ? passage(question) : new PassageRefused(problems);
    }

    private static SectionPassage passage(SectionQuestion question) {
        HoleSearch hole = new HoleSearch(question.hole());
        Section section = question.section();
        Frontier frontier = Frontier.of(hole);
        Optional<MostAir> most = MostAir.find(hole, frontier, section);
        boolean passes =
                most.filter(air -> air.air_mm() >= question.clearance_mm()).isPresent();
        return new SectionPassage(
                question,
                passes
                        || hole.findPlace(section.withClearance(question.clearance_mm()))
                                .isPresent(),
                most.orElse(null),
                hole.findThickestSharply(section.width_mm()).orElse(null),
                hole.findThickestSharply(section.thickness_mm()).orElse(null),
                frontier);
    }

    /** Where the bar lies in the hole, when it fits at all, be it without the clearance. */
    public Optional<PlacedSection> findPlace() {
        return Optional.ofNullable(most).filter(air -> air.air_mm() >= 0).map(MostAir::place);
    }

    /** The best place, also when the section is too large for it and its air less than nothing. */
    public Optional<MostAir> findMost() {
        return Optional.ofNullable(most);
    }

    public Optional<Spare> findSpare() {
        return findPlace().map(place -> Spare.of(question.hole(), place));
    }

    /** The thickest bar of the wanted width that passes, without air. */
    public Optional<PlacedSection> findLargestThickness() {
        return Optional.ofNullable(thickest);
    }

    /** The widest bar of the wanted thickness that passes, without air; seen from its other side, as the thickest one. */
    public Optional<PlacedSection> findLargestWidth() {
        return Optional.ofNullable(widest);
    }

    /** How far the bar may lean over its flat side. */
    public Optional<Angle> findLeanFlat() {
        return findLargestThickness().flatMap(most -> lean(question.section().thickness_mm(), most));
    }

    /** How far the bar may lean over its edge. */
    public Optional<Angle> findLeanOnEdge() {
        return findLargestWidth().flatMap(most -> lean(question.section().width_mm(), most));
    }

    private Optional<Angle> lean(double bar_mm, PlacedSection allowed) {
        return Lean.find(bar_mm, allowed.section().thickness_mm(), question.plate_mm());
    }
}
