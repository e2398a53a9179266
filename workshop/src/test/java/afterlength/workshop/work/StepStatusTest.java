package afterlength.workshop.work;

import static afterlength.workshop.work.Told.after;
import static afterlength.workshop.work.Told.entry;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

class StepStatusTest {
    private static final Step GLUE = Told.step(1, 1L, 16, true);
    private static final DiaryEntry START = entry(1, Writing.started(GLUE, after(0), "h"));
    private static final DiaryEntry DONE = entry(2, Writing.done(GLUE, after(0.5), 30, "h"));

    @Test
    void nothingWrittenIsNotBegun() {
        assertThat(StepStatus.of(GLUE, List.of(), after(1))).isEqualTo(new StepStatus.NotBegun());
    }

    @Test
    void aStartIsBegunFromItsOwnSecondOn() {
        assertThat(StepStatus.of(GLUE, List.of(START), after(0).minusSeconds(1)))
                .isEqualTo(new StepStatus.NotBegun());
        assertThat(StepStatus.of(GLUE, List.of(START), after(0))).isEqualTo(new StepStatus.Begun(after(0)));
    }

    @Test
    void doneWaitsForTheUsualHoursAndIsFinishedAtTheirEnd() {
        Instant until = after(16.5);
        assertThat(StepStatus.of(GLUE, List.of(START, DONE), until.minusSeconds(1)))
                .isEqualTo(new StepStatus.Waiting(after(0.5), until));
        assertThat(StepStatus.of(GLUE, List.of(START, DONE), until))
                .isEqualTo(new StepStatus.Finished(after(0.5), until));
    }

    @Test
    void aStepWithoutAWaitIsFinishedWhenItIsDone() {
        Step trim = Told.step(1, 1L, 0, false);
        assertThat(StepStatus.of(trim, List.of(entry(1, Writing.done(trim, after(1), 10, "h"))), after(1)))
                .isEqualTo(new StepStatus.Finished(after(1), after(1)));
    }

    @Test
    void notDryLengthensTheWaitFromWhenItWasSeen() {
        DiaryEntry wet = entry(3, Writing.notDry(GLUE, after(16), 8, "h"));
        assertThat(StepStatus.of(GLUE, List.of(START, DONE, wet), after(20)))
                .isEqualTo(new StepStatus.Waiting(after(0.5), after(24)));
    }

    @Test
    void notDryNeverShortensTheWait() {
        DiaryEntry wet = entry(3, Writing.notDry(GLUE, after(1), 2, "h"));
        assertThat(StepStatus.of(GLUE, List.of(START, DONE, wet), after(4)))
                .isEqualTo(new StepStatus.Waiting(after(0.5), after(16.5)));
    }

    @Test
    void notDryAfterTheWaitWasOverMakesItWaitAgain() {
        DiaryEntry wet = entry(3, Writing.notDry(GLUE, after(30), 6, "h"));
        assertThat(StepStatus.of(GLUE, List.of(DONE, wet), after(29)))
                .isEqualTo(new StepStatus.Finished(after(0.5), after(16.5)));
        assertThat(StepStatus.of(GLUE, List.of(DONE, wet), after(30)))
                .isEqualTo(new StepStatus.Waiting(after(0.5), after(36)));
    }

    @Test
    void aStartAfterDoneOpensTheStepAgain() {
        DiaryEntry again = entry(3, Writing.started(GLUE, after(20), "h"));
        assertThat(StepStatus.of(GLUE, List.of(START, DONE, again), after(21)))
                .isEqualTo(new StepStatus.Begun(after(20)));
    }

    @Test
    void startAndDoneInTheSameSecondKeepTheOrderOfTheirFirstWriting() {
        DiaryEntry done = entry(2, Writing.done(GLUE, after(0), 0, "h"));
        DiaryEntry correctedStart =
                new DiaryEntry(9, 1L, false, "", after(5), 1, after(0), Writing.started(GLUE, after(0), "other hand"));
        assertThat(StepStatus.of(GLUE, List.of(done, correctedStart), after(1)))
                .isEqualTo(new StepStatus.Waiting(after(0), after(16)));
    }
}
