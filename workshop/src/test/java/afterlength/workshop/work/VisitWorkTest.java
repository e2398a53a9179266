package afterlength.workshop.work;

import static afterlength.workshop.work.Told.after;
import static afterlength.workshop.work.Told.entry;
import static afterlength.workshop.work.Told.step;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VisitWorkTest {
    /** Two treatments: clean and glue a seam, then ease the pegs. */
    private static final Step CLEAN = step(1, 10L, 2, false);

    private static final Step GLUE = step(2, 10L, 16, true);
    private static final Step PEGS = step(3, 20L, 0, false);
    private static final List<Step> STEPS = List.of(CLEAN, GLUE, PEGS);

    @Test
    void theFirstInTheOrderComesFirst() {
        assertThat(turn(after(0))).isEqualTo(new Turn.Next(CLEAN, Optional.empty()));
    }

    @Test
    void whatIsInHandComesBeforeEverything() {
        assertThat(turn(after(1), entry(1, Writing.started(PEGS, after(0), "h"))))
                .isEqualTo(new Turn.InHand(PEGS, after(0)));
    }

    @Test
    void aStepWaitsForTheDryingOfTheStepBeforeItInTheSameTreatment() {
        assertThat(turn(after(1), entry(1, Writing.done(CLEAN, after(0), 5, "h"))))
                .isEqualTo(new Turn.Held(after(2), Optional.of(GLUE)));
    }

    @Test
    void anotherTreatmentGoesOnWhileOneDriesThatLeavesTheInstrumentFree() {
        List<Step> pegsNext = List.of(CLEAN, step(2, 20L, 0, false));
        assertThat(VisitWork.of(pegsNext, List.of(entry(1, Writing.done(CLEAN, after(0), 5, "h"))), after(1))
                        .turn())
                .isEqualTo(new Turn.Next(pegsNext.get(1), Optional.empty()));
    }

    @Test
    void nothingIsDoneToAnInstrumentThatAWaitHolds() {
        assertThat(turn(
                        after(3),
                        entry(1, Writing.done(CLEAN, after(0), 5, "h")),
                        entry(2, Writing.done(GLUE, after(2), 5, "h"))))
                .isEqualTo(new Turn.Held(after(18), Optional.of(PEGS)));
    }

    @Test
    void afterAWaitTheNextStepAsksForACheck() {
        Turn turn = turn(
                after(20),
                entry(1, Writing.done(CLEAN, after(0), 5, "h")),
                entry(2, Writing.done(GLUE, after(2), 5, "h")));
        assertThat(turn)
                .isEqualTo(new Turn.Next(
                        PEGS, Optional.of(new StepNow(GLUE, new StepStatus.Finished(after(2), after(18))))));
    }

    @Test
    void theLastWaitHoldsTheInstrumentWhetherItBlocksOrNot() {
        Step settle = step(1, 10L, 48, false);
        VisitWork work =
                VisitWork.of(List.of(settle), List.of(entry(1, Writing.done(settle, after(0), 5, "h"))), after(1));
        assertThat(work.turn()).isEqualTo(new Turn.Held(after(48), Optional.empty()));
    }

    @Test
    void allStepsDoneAndDryIsAllDone() {
        Turn turn = turn(
                after(20),
                entry(1, Writing.done(CLEAN, after(0), 5, "h")),
                entry(2, Writing.done(GLUE, after(2), 5, "h")),
                entry(3, Writing.done(PEGS, after(19), 5, "h")));
        assertThat(turn).isEqualTo(new Turn.AllDone(Optional.empty()));
    }

    @Test
    void withoutStepsThereIsNoTurn() {
        assertThat(VisitWork.of(List.of(), List.of(), after(0)).turn()).isEqualTo(new Turn.NoSteps());
    }

    @Test
    void whatDriesIsListedTheFirstToComeFreeFirst() {
        VisitWork work = VisitWork.of(
                STEPS,
                List.of(
                        entry(1, Writing.done(CLEAN, after(0), 5, "h")),
                        entry(2, Writing.done(GLUE, after(0), 5, "h"))),
                after(1));
        assertThat(work.listWaiting()).extracting(StepNow::step).containsExactly(CLEAN, GLUE);
    }

    private static Turn turn(Instant at, DiaryEntry... diary) {
        return VisitWork.of(STEPS, List.of(diary), at).turn();
    }
}
