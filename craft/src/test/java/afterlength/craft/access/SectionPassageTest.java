package afterlength.craft.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Outline;
import afterlength.craft.units.Problem;
import org.junit.jupiter.api.Test;

/** The answer to one bar before one hole, and what is said to an outline that is none. */
class SectionPassageTest {
    private static final Outline BOX = Figures.rectangle(20, 6);

    @Test
    void aBarThatFitsIsPlacedWithTheSameAirOnBothNarrowSides() {
        SectionPassage passage = passage(BOX, new Section(12, 5), 0.3);
        assertThat(passage.passes()).isTrue();
        assertThat(passage.findMost().orElseThrow().air_mm()).isCloseTo(0.5, within(0.011));
        assertThat(passage.findLargestThickness().orElseThrow().section().thickness_mm())
                .isCloseTo(6, within(1e-6));
        assertThat(passage.findLargestWidth().orElseThrow().section().thickness_mm())
                .isCloseTo(20, within(1e-4));
        assertThat(passage.findLeanFlat().orElseThrow().deg()).isPositive();
    }

    @Test
    void aBarThatFitsWithLessAirThanWantedIsPlacedButDoesNotPass() {
        SectionPassage passage = passage(BOX, new Section(12, 5.6), 0.3);
        assertThat(passage.passes()).isFalse();
        assertThat(passage.findPlace()).isPresent();
        assertThat(passage.findMost().orElseThrow().air_mm()).isCloseTo(0.2, within(0.011));
    }

    @Test
    void aBarThatIsTooThickIsToldByHowMuch() {
        SectionPassage passage = passage(BOX, new Section(12, 8), 0);
        assertThat(passage.passes()).isFalse();
        assertThat(passage.findPlace()).isEmpty();
        assertThat(passage.findSpare()).isEmpty();
        assertThat(passage.findLeanFlat()).isEmpty();
        assertThat(passage.findMost().orElseThrow().air_mm()).isCloseTo(-1, within(0.011));
    }

    @Test
    void anOutlineThatCrossesItselfIsRefused() {
        assertThat(refused(Figures.of(0, 0, 10, 10, 10, 0, 0, 10)))
                .isEqualTo(new Problem(
                        "/outline_mm",
                        null,
                        "The outline crosses or touches itself. Give the points once, in order round the hole."));
    }

    @Test
    void anOutlineInMetresIsRefused() {
        assertThat(refused(Figures.rectangle(0.08, 0.006)))
                .isEqualTo(new Problem(
                        "/outline_mm",
                        0L,
                        "The outline is 0 mm long; it must be 1 to 500 mm. Give the points in millimetres."));
    }

    @Test
    void anOutlineOfTooManyPointsIsRefused() {
        assertThat(refused(Figures.circle(5, 2001)))
                .isEqualTo(new Problem(
                        "/outline_mm",
                        2001,
                        "The outline has 2001 points; it must have 3 to 2000. Take every second point, or trace with a"
                                + " coarser step."));
    }

    private static Problem refused(Outline hole) {
        return ((PassageRefused) SectionPassage.of(new SectionQuestion(hole, new Section(2, 1), 0.3, 2.7)))
                .problems()
                .get(0);
    }

    private static SectionPassage passage(Outline hole, Section section, double clearance_mm) {
        return (SectionPassage) SectionPassage.of(new SectionQuestion(hole, section, clearance_mm, 2.7));
    }
}
