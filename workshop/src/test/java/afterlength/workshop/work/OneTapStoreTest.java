package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;

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

    private static @Nullable Integer minutes(OneTap.Tapped tapped) {
        return ((OneTap.Tapped.Kept) tapped).entry().writing().minutes();
    }
}
