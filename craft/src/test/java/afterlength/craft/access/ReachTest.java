package afterlength.craft.access;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How far a clamp has to reach, and what speaks for opening. */
class ReachTest {
    private static final Outline HOLE = Figures.rectangle(10, 40);
    private static final Crack CRACK = new Crack(List.of(Point.of(13, 10), Point.of(13, 40), Point.of(13, 76)));

    @Test
    void theThroatIsTheWayFromTheFurthestEndOfTheCrack() {
        assertThat(Reach.throat_mm(HOLE, Point.of(13, 20))).isCloseTo(3, within(1e-12));
        assertThat(Reach.throat_mm(HOLE, CRACK)).isCloseTo(Math.hypot(3, 36), within(1e-9));
    }

    @Test
    void cleatsBeyondTheLongestThroatAreOutOfReach() {
        CleatRow row = CleatRow.of(new CleatPlan(
                CRACK, CleatPlan.USUAL, CleatShape.SQUARE, CleatGrain.DIAGONAL, 25, 8, 90, List.of(), 430));
        Clamp clamp = new Clamp(25, 10, 8, 2, 2, 3);
        List<PlacedCleat> beyond = Reach.outOfReach(HOLE, row.cleats(), List.of(clamp), 0.3);
        assertThat(beyond).allMatch(cleat -> Reach.throat_mm(HOLE, cleat.centre()) > 24.7);
        assertThat(beyond).containsExactly(row.cleats().get(row.cleats().size() - 1));
        assertThat(Reach.outOfReach(HOLE, row.cleats(), List.of(), 0.3)).isEqualTo(row.cleats());
    }

    @Test
    void everyRuleAnswersWithItsFact() {
        assertThat(ReasonToOpen.list(new CrackFacts(true, true, 0.5, false, false, 3)))
                .containsExactly(
                        new ReasonToOpen.UnderPost(),
                        new ReasonToOpen.UnderBar(),
                        new ReasonToOpen.OutOfLevel(0.5),
                        new ReasonToOpen.NotCleanable(),
                        new ReasonToOpen.OutOfReach(3));
    }

    @Test
    void aLevelCleanReachableCrackHasNoReasonToOpen() {
        assertThat(ReasonToOpen.list(new CrackFacts(false, false, 0.2, false, true, 1)))
                .isEmpty();
        assertThat(ReasonToOpen.list(new CrackFacts(false, false, 0.5, true, true, 0)))
                .isEmpty();
    }
}
