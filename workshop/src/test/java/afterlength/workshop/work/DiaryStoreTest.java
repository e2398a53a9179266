package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.instrument.Visit;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiaryStoreTest {
    private static final Instant TEN = Instant.parse("2026-11-04T10:00:00Z");

    @TempDir
    Path folder;

    private Shop shop;
    private Visit visit;
    private Step glue;

    @BeforeEach
    void aVisitWithASeamAgreed() {
        shop = new Shop(folder);
        visit = shop.inWork("Viola", null, "seam");
        glue = shop.step(visit, "warm, glue, clamp");
    }

    @Test
    void anEntryComesBackWithEverythingThatWasWritten() {
        Material hide = shop.materials.add(
                new Material(0, "Hide glue", "glue", "12 October", "water and warmth", "", false, 1));
        Writing writing = Writing.done(glue, TEN, 20, "Ada").with(hide).withRemark("two clamps");
        shop.diary.write(writing, TEN.plusSeconds(60));
        DiaryEntry kept = shop.diary.listNow(visit.id()).get(0);
        assertThat(kept.writing()).isEqualTo(writing);
        assertThat(kept.writing().material()).isEqualTo("Hide glue, batch 12 October");
        assertThat(kept.writing().reversibleWith()).isEqualTo("water and warmth");
        assertThat(kept.stepName()).isEqualTo("warm, glue, clamp");
        assertThat(kept.late()).isFalse();
    }

    @Test
    void aCorrectionReplacesAndTheFirstWritingStaysInTheHistory() {
        DiaryEntry first = shop.diary.write(Writing.done(glue, TEN, 20, "Ada"), TEN);
        DiaryEntry second = shop.diary
                .correct(first.id(), Writing.done(glue, TEN, 25, "Ada"), TEN.plusSeconds(90))
                .orElseThrow();
        assertThat(shop.diary.listNow(visit.id())).containsExactly(second);
        assertThat(shop.diary.listHistory(visit.id())).containsExactly(first, second);
        assertThat(second.firstWrittenAt()).isEqualTo(TEN);
        assertThat(second.corrected()).isTrue();
    }

    @Test
    void twoCorrectionsOfTheSameEntryDoNotBothStand() {
        DiaryEntry first = shop.diary.write(Writing.done(glue, TEN, 20, "Ada"), TEN);
        assertThat(shop.diary.correct(first.id(), Writing.done(glue, TEN, 25, "Ada"), TEN))
                .isPresent();
        assertThat(shop.diary.correct(first.id(), Writing.done(glue, TEN, 30, "Ada"), TEN))
                .isEmpty();
        assertThat(shop.diary.listNow(visit.id()))
                .extracting(entry -> entry.writing().minutes())
                .containsExactly(25);
    }

    @Test
    void whatIsTakenOutCanBePutInAgain() {
        DiaryEntry entry = shop.diary.write(Writing.started(glue, TEN, "Ada"), TEN);
        DiaryEntry out = shop.diary.withdraw(entry.id(), TEN.plusSeconds(5)).orElseThrow();
        assertThat(shop.diary.listNow(visit.id())).isEmpty();
        DiaryEntry again = shop.diary.takeBack(out.id(), TEN.plusSeconds(9)).orElseThrow();
        assertThat(shop.diary.listNow(visit.id())).containsExactly(again);
        assertThat(again.writing()).isEqualTo(entry.writing());
    }

    @Test
    void anEntryWrittenMoreThanTwelveHoursLaterIsLateAndItsCorrectionStaysSo() {
        Instant twelve = TEN.plus(Duration.ofHours(12));
        assertThat(shop.diary.write(Writing.started(glue, TEN, "Ada"), twelve).late())
                .isFalse();
        DiaryEntry late = shop.diary.write(Writing.done(glue, TEN, 5, "Ada"), twelve.plusSeconds(1));
        assertThat(late.late()).isTrue();
        assertThat(shop.diary.correct(late.id(), late.writing().withRemark("r"), twelve.plusSeconds(60)))
                .get()
                .matches(DiaryEntry::late);
    }

    @Test
    void aCorrectionLongAfterwardsDoesNotMakeAPromptEntryLate() {
        DiaryEntry prompt = shop.diary.write(Writing.done(glue, TEN, 5, "Ada"), TEN);
        assertThat(shop.diary.correct(prompt.id(), prompt.writing().withRemark("r"), TEN.plus(Duration.ofDays(9))))
                .get()
                .matches(entry -> !entry.late() && entry.corrected());
    }

    @Test
    void theDiaryIsInTheOrderOfWhatItTells() {
        shop.diary.write(Writing.done(glue, TEN, 5, "Ada"), TEN);
        shop.diary.write(Writing.started(glue, TEN.minusSeconds(300), "Ada"), TEN.plusSeconds(10));
        shop.diary.write(Writing.note(visit.id(), TEN.minusSeconds(900), "Ada", "warm room"), TEN.plusSeconds(20));
        assertThat(shop.diary.listNow(visit.id()))
                .extracting(entry -> entry.writing().what())
                .containsExactly(DiaryEvent.NOTE, DiaryEvent.STARTED, DiaryEvent.DONE);
    }

    @Test
    void anEntryThatIsNotThereSaysSo() {
        assertThatThrownBy(() -> shop.diary.get(99))
                .isInstanceOf(NotHere.class)
                .hasMessage("There is no diary entry 99 in this shop.");
        assertThat(shop.diary.find(99)).isEmpty();
    }

    @Test
    void aDiaryThatCannotHaveHappenedIsRefused() {
        assertThatThrownBy(() -> new Writing(1, null, DiaryEvent.DONE, TEN, null, null, "h", "", "", ""))
                .hasMessage("only a note stands without a step");
        assertThatThrownBy(() -> new Writing(1, 1L, DiaryEvent.NOT_DRY, TEN, null, null, "h", "", "", ""))
                .hasMessage("further hours belong to “not dry” and to nothing else");
        assertThatThrownBy(() -> new Writing(1, 1L, DiaryEvent.STARTED, TEN, 5, null, "h", "", "", ""))
                .hasMessage("minutes belong to what is done or to a note");
    }

    @Test
    void theDiariesOfTheWholeHouseAreToldTogether() {
        Visit other = shop.inWork("Cello", null, "pegs-eased");
        shop.diary.write(Writing.started(glue, TEN, "Ada"), TEN);
        shop.diary.write(Writing.started(shop.steps.list(other.id()).get(0), TEN, "Ada"), TEN);
        assertThat(shop.diary.listInHouse())
                .extracting(entry -> entry.writing().visitId())
                .isEqualTo(List.of(visit.id(), other.id()));
    }
}
