package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class StepWordsTest {
    private static final Instant NOW = Instant.parse("2026-11-04T13:15:00Z");

    @Test
    void theUnitOfARangeIsSaidOnceWhenBothEndsHaveIt() {
        assertThat(StepWords.hands(10, 15, 30)).isEqualTo("about 15 min (10 – 30 min)");
        assertThat(StepWords.hands(30, 60, 150)).isEqualTo("about 1 h (30 min – 2 h 30)");
        assertThat(StepWords.hands(60, 90, 120)).isEqualTo("about 1 h 30 (1 – 2 h)");
        assertThat(StepWords.hands(20, 20, 20)).isEqualTo("about 20 min");
        assertThat(StepWords.hands(0, 0, 5)).isEqualTo("hardly any hands-on time");
        assertThat(StepWords.wait(4, 16, 24)).isEqualTo("16 h (4 – 24 h)");
        assertThat(StepWords.wait(0.5, 2, 12)).isEqualTo("2 h (30 min – 12 h)");
        assertThat(StepWords.wait(24, 72, 336)).isEqualTo("3 days (24 h – 14 days)");
        assertThat(StepWords.wait(72, 192, 336)).isEqualTo("8 days (3 – 14 days)");
        assertThat(StepWords.wait(0, 1, 24)).isEqualTo("1 h (up to 24 h)");
        assertThat(StepWords.wait(24, 24, 24)).isEqualTo("24 h");
    }

    @Test
    void whereAStepStandsIsSaidNearNow() {
        assertThat(StepWords.status(new StepStatus.NotBegun(), NOW)).isEqualTo("not begun");
        assertThat(StepWords.status(new StepStatus.Begun(NOW.minusSeconds(900)), NOW))
                .isEqualTo("begun 13:00");
        assertThat(StepWords.status(new StepStatus.Waiting(NOW, NOW.plusSeconds(86_400)), NOW))
                .isEqualTo("waiting until tomorrow 13:15");
        assertThat(StepWords.status(new StepStatus.Finished(NOW.minusSeconds(86_400), NOW), NOW))
                .isEqualTo("finished, done yesterday 13:15");
    }

    @Test
    void theEndOfAWaitIsNotSaidToBeATest() {
        Step glue = Told.step(1, 1L, 16, true);
        assertThat(StepWords.check(new StepNow(glue, new StepStatus.Finished(NOW.minusSeconds(57_600), NOW)), NOW))
                .isEqualTo(
                        "The usual wait after “step 1” ended 13:15. That is common practice, not a test: check that it is"
                                + " ready before you go on.");
    }
}
