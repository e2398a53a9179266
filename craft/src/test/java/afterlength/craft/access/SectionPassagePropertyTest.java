package afterlength.craft.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Outline;
import afterlength.craft.units.Angle;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Laws of the passage that hold for every hole; to run a case again, use its seed. */
class SectionPassagePropertyTest {
    private static final double TOLERANCE_mm = Frontier.TOLERANCE_MM;

    @Test
    void theFrontierFallsAndIsItsOwnMirrorImage() {
        for (long seed = 1; seed <= 30; seed++) {
            List<Section> sections = Frontier.of(Figures.drawn(seed)).sections();
            assertThat(sections).as("seed " + seed).isNotEmpty();
            for (int i = 1; i < sections.size(); i++) {
                Section before = sections.get(i - 1);
                Section here = sections.get(i);
                assertThat(here.width_mm()).as("seed " + seed).isGreaterThanOrEqualTo(before.width_mm());
                assertThat(here.thickness_mm()).as("seed " + seed).isLessThanOrEqualTo(before.thickness_mm());
            }
            for (int i = 0; i < sections.size(); i++) {
                Section mirrored = sections.get(sections.size() - 1 - i);
                assertThat(sections.get(i).width_mm()).as("seed " + seed).isEqualTo(mirrored.thickness_mm());
            }
        }
    }

    @Test
    void everyPointOfTheFrontierIsWithinTheTolerance() {
        for (long seed = 1; seed <= 20; seed++) {
            HoleSearch hole = new HoleSearch(Figures.drawn(seed));
            for (Section section : Frontier.of(hole).sections()) {
                if (section.width_mm() < section.thickness_mm()) {
                    continue;
                }
                String shown = "seed " + seed + " " + section;
                assertThat(thickest(hole, section.width_mm() - TOLERANCE_mm))
                        .as(shown)
                        .isGreaterThan(section.thickness_mm() - TOLERANCE_mm);
                assertThat(thickest(hole, section.width_mm() + TOLERANCE_mm))
                        .as(shown)
                        .isLessThan(section.thickness_mm() + TOLERANCE_mm);
            }
        }
    }

    private static double thickest(HoleSearch hole, double width_mm) {
        return hole.findThickestSharply(width_mm)
                .map(place -> place.section().thickness_mm())
                .orElse(0.0);
    }

    @Test
    void turningTheHoleTurnsTheAnswer() {
        for (long seed = 1; seed <= 20; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Outline hole = Figures.drawn(seed);
            Outline turned = Figures.turned(hole, random.nextDouble(360));
            double width_mm = new HoleSearch(hole).longest_mm() * random.nextDouble(0.3, 0.8);
            double here_mm = thickest(new HoleSearch(hole), width_mm);
            double there_mm = thickest(new HoleSearch(turned), width_mm);
            double wider_mm = thickest(new HoleSearch(turned), width_mm + TOLERANCE_mm);
            assertThat(here_mm).as("seed " + seed).isBetween(wider_mm - TOLERANCE_mm, Math.max(there_mm, here_mm));
        }
    }

    @Test
    void theAirAtThePlaceIsThereAndIsAllThereIs() {
        for (long seed = 1; seed <= 40; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Outline hole = Figures.drawn(seed);
            Section section = new Section(random.nextDouble(0.5, 4), random.nextDouble(0.5, 2));
            SectionPassage passage = passage(hole, section, random.nextDouble(0, 0.4));
            String shown = "seed " + seed + " " + section;
            double air_mm = passage.findMost().map(MostAir::air_mm).orElse(Double.NEGATIVE_INFINITY);
            if (air_mm >= 0) {
                PlacedSection place = passage.findPlace().orElseThrow();
                Section grown = section.withClearance(air_mm);
                assertThat(SectionPassageOracleTest.fits(
                                hole, new PlacedSection(grown, place.centre(), place.turn_deg())))
                        .as(shown)
                        .isTrue();
                Spare spare = passage.findSpare().orElseThrow();
                assertThat(List.of(spare.start_mm(), spare.end_mm(), spare.below_mm(), spare.above_mm()))
                        .as(shown)
                        .allMatch(side_mm -> side_mm >= air_mm - 1e-6);
            }
            Section tooLarge = section.withClearance(Math.max(air_mm, -0.2) + TOLERANCE_mm);
            assertThat(thickest(new HoleSearch(hole), tooLarge.width_mm()))
                    .as(shown)
                    .isLessThan(tooLarge.thickness_mm() + TOLERANCE_mm);
        }
    }

    @Test
    void everySideOfThePlacedSectionMayGoOutByItsSpareAndNoFurther() {
        Outline hole = Figures.rectangle(20, 10);
        PlacedSection placed = new PlacedSection(new Section(8, 4), afterlength.craft.geometry.Point.of(7, 4), 0);
        Spare spare = Spare.of(hole, placed);
        assertThat(spare.start_mm()).isCloseTo(3, within(1e-9));
        assertThat(spare.end_mm()).isCloseTo(9, within(1e-9));
        assertThat(spare.below_mm()).isCloseTo(2, within(1e-9));
        assertThat(spare.above_mm()).isCloseTo(4, within(1e-9));
    }

    @Test
    void aBarThatLeansNeedsTheSectionItIsGiven() {
        for (long seed = 1; seed <= 500; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double bar_mm = random.nextDouble(0.5, 10);
            double allowed_mm = bar_mm + random.nextDouble(0, 5);
            double plate_mm = random.nextDouble(0, 6);
            Angle lean = Lean.find(bar_mm, allowed_mm, plate_mm).orElseThrow();
            assertThat(Lean.needed_mm(bar_mm, lean, plate_mm))
                    .as("seed " + seed)
                    .isCloseTo(allowed_mm, within(1e-9 * (1 + allowed_mm)));
        }
        assertThat(Lean.find(5, 4.9, 2.7)).isEmpty();
    }

    private static SectionPassage passage(Outline hole, Section section, double clearance_mm) {
        return (SectionPassage) SectionPassage.of(new SectionQuestion(hole, section, clearance_mm, 2.7));
    }
}
