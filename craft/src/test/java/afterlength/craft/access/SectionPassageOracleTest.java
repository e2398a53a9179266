package afterlength.craft.access;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.geometry.Outline;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

/**
 * The search over turns against {@link RasterOracle} on 200 outlines with hollows. What the search names must fit, by another
 * library; and nothing wider and thicker by {@link Frontier#TOLERANCE_MM} may fit, by the upper end of the oracle's bracket.
 */
class SectionPassageOracleTest {
    private static final int OUTLINES = 200;
    /** A section laid against the edge is moved over it by rounding, no more. */
    private static final double ROUNDING_MM = 1e-6;

    @Test
    void nothingThickerFitsAndWhatIsNamedFits() {
        LongStream.rangeClosed(1, OUTLINES).parallel().forEach(SectionPassageOracleTest::compare);
    }

    private static void compare(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Outline hole = Figures.drawn(seed);
        HoleSearch search = new HoleSearch(hole);
        double width_mm = search.longest_mm() * random.nextDouble(0.15, 0.95);
        Optional<PlacedSection> found = search.findThickestSharply(width_mm);
        double thickness_mm = found.map(place -> place.section().thickness_mm()).orElse(ThickestSection.THINNEST_MM);
        String shown = "seed " + seed + ", width " + width_mm + ", found " + found;
        assertThat(found.map(place -> fits(hole, place)).orElse(true)).as(shown).isTrue();
        double tolerance_mm = Frontier.TOLERANCE_MM;
        double most_mm =
                new RasterOracle(hole).thickest(width_mm + tolerance_mm).high_mm();
        assertThat(thickness_mm).as(shown).isGreaterThanOrEqualTo(most_mm - tolerance_mm);
    }

    static boolean fits(Outline hole, PlacedSection place) {
        Section smaller = place.section().withClearance(-ROUNDING_MM);
        Outline corners = new Outline(new PlacedSection(smaller, place.centre(), place.turn_deg()).corners());
        return Figures.polygon(hole).contains(Figures.polygon(corners));
    }
}
