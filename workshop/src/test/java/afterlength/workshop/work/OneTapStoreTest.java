package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Sent;
import afterlength.workshop.instrument.Visit;
import java.nio.file.Path;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OneTapStoreTest {
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
    void minutesAreCountedFromStartToDoneAndRounded() {
        shop.tap.start(glue.id(), "Ada", TEN);
        assertThat(minutes(shop.tap.done(glue.id(), "Ada", TEN.plusSeconds(22 * 60 + 29))))
                .isEqualTo(22);
    }

    @Test
    void aStretchThatHoldsANightIsNotCounted() {
        shop.tap.start(glue.id(), "Ada", TEN);
        assertThat(minutes(shop.tap.done(
                        glue.id(), "Ada", TEN.plus(HandsOnCount.LONGEST).plusSeconds(1))))
                .isNull();
    }

    @Test
    void doneWithoutAStartLeavesTheMinutesOpen() {
        assertThat(minutes(shop.tap.done(glue.id(), "Ada", TEN))).isNull();
    }

    @Test
    void aSecondTapWritesNothing() {
        shop.tap.start(glue.id(), "Ada", TEN);
        assertThat(shop.tap.start(glue.id(), "Ada", TEN.plusSeconds(1)))
                .isEqualTo(new OneTap.Tapped.NotNow(glue, new StepStatus.Begun(TEN)));
        shop.tap.done(glue.id(), "Ada", TEN.plusSeconds(60));
        shop.tap.done(glue.id(), "Ada", TEN.plusSeconds(61));
        shop.tap.start(glue.id(), "Ada", TEN.plusSeconds(62));
        assertThat(shop.diary.listNow(visit.id()))
                .extracting(entry -> entry.writing().what())
                .containsExactly(DiaryEvent.STARTED, DiaryEvent.DONE);
    }

    private static final String KEY = "0b0f7c3e-8a52-4a34-9a77-2b6b1a1f8f10";

    /** The machine took it, but its answer never reached the screen: the screen sends again, even after it was taken back. */
    @Test
    void aTapSentAgainIsTakenOnce() {
        Sent sent = new Sent(KEY, TEN);
        OneTap.Tapped first = shop.tap.start(glue.id(), "Ada", sent, TEN.plusSeconds(60));
        long entry = ((OneTap.Tapped.Kept) first).entry().id();
        shop.diary.withdraw(entry, TEN.plusSeconds(70));
        assertThat(shop.tap.start(glue.id(), "Ada", sent, TEN.plusSeconds(80)))
                .isEqualTo(new OneTap.Tapped.Before(glue, "?entry=" + entry));
        assertThat(shop.diary.listNow(visit.id())).isEmpty();
    }

    /** What waited on a screen keeps the moment of the tap, and minutes are counted between taps. */
    @Test
    void aLateTapKeepsItsMoment() {
        Instant later = TEN.plusSeconds(3600);
        shop.tap.start(glue.id(), "Ada", new Sent(KEY, TEN), later);
        OneTap.Tapped done = shop.tap.done(
                glue.id(), "Ada", new Sent(KEY.replace('0', '1'), TEN.plusSeconds(12 * 60)), later.plusSeconds(1));
        assertThat(minutes(done)).isEqualTo(12);
        assertThat(((OneTap.Tapped.Kept) done).entry().writing().at()).isEqualTo(TEN.plusSeconds(12 * 60));
    }

    private static @Nullable Integer minutes(OneTap.Tapped tapped) {
        return ((OneTap.Tapped.Kept) tapped).entry().writing().minutes();
    }
}
