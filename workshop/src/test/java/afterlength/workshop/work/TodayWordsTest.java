package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The sentence in large type, word for word. */
class TodayWordsTest {
    private static final LocalTime SIX = LocalTime.of(18, 0);
    private static final HouseVisit VIOLA = visit(1, "Viola, about 1905", LocalDate.of(2026, 11, 10));
    private static final HouseVisit CELLO = visit(2, "Cello", null);
    private static final Step GLUE = step(1, 1, "warm, glue, clamp", 15, 16);
    private static final Step CUT = step(2, 2, "new bridge: feet, height, crown, cut", 120, 0);

    @Test
    void whatIsInHandGoesOn() {
        Sentence sentence = sentence(
                "2026-11-04T13:15:00Z",
                List.of(VIOLA),
                Writing.started(GLUE, Instant.parse("2026-11-04T12:50:00Z"), "h"));
        assertThat(said(sentence)).isEqualTo("Go on: warm, glue, clamp – Viola, about 1905.");
        assertThat(sentence.why()).isEqualTo("Begun 12:50, 25 min ago; about 15 min (10 – 30 min) is usual.");
    }

    @Test
    void thePromisedDayComesFirst() {
        Sentence sentence = sentence("2026-11-04T13:15:00Z", List.of(VIOLA, CELLO));
        assertThat(said(sentence)).isEqualTo("Next: warm, glue, clamp – Viola, about 1905.");
        assertThat(sentence.why())
                .isEqualTo(
                        "Promised for 10 November 2026, in 6 days. Hands: about 15 min (10 – 30 min); fits before closing"
                                + " at 18:00.");
    }

    @Test
    void whatStillFitsComesBeforeWhatDoesNot() {
        HouseVisit promisedCello = visit(2, "Cello", LocalDate.of(2026, 11, 5));
        Sentence sentence = sentence("2026-11-04T17:00:00Z", List.of(promisedCello, VIOLA));
        assertThat(said(sentence)).isEqualTo("Next: warm, glue, clamp – Viola, about 1905.");
    }

    @Test
    void whenNothingFitsTheFirstIsNamedWithWhatIsLeftOfTheDay() {
        Sentence sentence = sentence("2026-11-04T17:00:00Z", List.of(CELLO));
        assertThat(said(sentence)).isEqualTo("Next: new bridge: feet, height, crown, cut – Cello.");
        assertThat(sentence.why())
                .isEqualTo(
                        "No day is promised; received on 26 October 2026. Hands: about 2 h (10 min – 4 h); more than the"
                                + " 1 h left before 18:00.");
    }

    @Test
    void afterClosingNobodyIsHurried() {
        Sentence sentence = sentence("2026-11-04T18:00:00Z", List.of(VIOLA));
        assertThat(said(sentence))
                .isEqualTo("The shop has closed for today. Next: warm, glue, clamp – Viola, about 1905.");
        assertThat(sentence.why())
                .isEqualTo("Promised for 10 November 2026, in 6 days. Hands: about 15 min (10 – 30 min).");
    }

    @Test
    void whileEverythingDriesHandsAreFree() {
        Sentence sentence = sentence(
                "2026-11-04T18:30:00Z",
                List.of(VIOLA),
                Writing.done(GLUE, Instant.parse("2026-11-04T17:30:00Z"), 20, "h"));
        assertThat(said(sentence)).isEqualTo("Hands are free until tomorrow 09:30.");
        assertThat(sentence.why())
                .isEqualTo(
                        "Everything on the bench dries or is clamped. Then Viola, about 1905 has had its last wait.");
    }

    @Test
    void anEmptyBenchSendsToTheDesk() {
        Sentence sentence = sentence(
                "2026-11-06T13:15:00Z",
                List.of(VIOLA),
                Writing.done(GLUE, Instant.parse("2026-11-04T17:30:00Z"), 20, "h"));
        assertThat(said(sentence)).isEqualTo("Nothing waits on the bench. Hand over – Viola, about 1905.");
        assertThat(sentence.why()).isEqualTo("Promised for 10 November 2026, in 4 days; all agreed steps are done.");
    }

    @Test
    void anEmptyHouseSaysSo() {
        assertThat(said(sentence("2026-11-04T13:15:00Z", List.of()))).isEqualTo("No instrument is in the house.");
    }

    @Test
    void whatIsLeftIsSaidAsThePageCounts() {
        assertThat(left(16, "2026-11-05T09:29:59Z")).isEqualTo("1 min left");
        assertThat(left(16, "2026-11-04T18:00:00Z")).isEqualTo("15 h 30 left");
        assertThat(left(192, "2026-11-04T17:30:00Z")).isEqualTo("8.0 days left");
    }

    private static String left(double wait_h, String now) {
        Instant done = Instant.parse("2026-11-04T17:30:00Z");
        Step step = step(1, 1, "x", 1, wait_h);
        StepStatus.Waiting waiting = new StepStatus.Waiting(done, done.plusSeconds((long) (wait_h * 3600)));
        return TodayWords.left(new Drying(VIOLA, step, waiting), Instant.parse(now));
    }

    private static Sentence sentence(String now, List<HouseVisit> house, Writing... diary) {
        List<DiaryEntry> entries = new ArrayList<>();
        for (Writing writing : diary) {
            entries.add(Told.entry(entries.size() + 1, writing));
        }
        List<Step> steps = house.isEmpty() ? List.of() : List.of(GLUE, CUT);
        return TodayWords.sentence(Today.of(house, steps, entries, new DayLeft(Instant.parse(now), SIX)));
    }

    private static String said(Sentence sentence) {
        return sentence.lead() + sentence.work() + sentence.rest();
    }

    private static HouseVisit visit(long id, String instrument, @Nullable LocalDate promised) {
        return new HouseVisit(id, id, instrument, "2026-00" + id, LocalDate.of(2026, 10, 26), promised, 1, 1, 1);
    }

    private static Step step(long id, long visit, String name, int typical, double wait_h) {
        return new Step(
                id,
                visit,
                1L,
                1,
                name,
                10,
                typical,
                typical * 2,
                wait_h,
                wait_h,
                wait_h,
                "",
                true,
                Step.Standing.IN_ORDER,
                1);
    }
}
