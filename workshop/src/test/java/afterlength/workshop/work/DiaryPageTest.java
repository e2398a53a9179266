package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.instrument.Visit;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DiaryPageTest {
    @TempDir
    Path folder;

    private Shop shop;
    private Visit visit;
    private Step glue;
    private OpenedDesk desk;
    private String fresh;

    @BeforeEach
    void open() {
        shop = new Shop(folder);
        visit = shop.inWork("Viola", null, "seam");
        glue = shop.step(visit, "warm, glue, clamp");
        desk = shop.open();
        fresh = "/visits/" + visit.id() + "/diary/new?step=" + glue.id() + "&what=";
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void aMaterialFromTheShelfIsWrittenWithBatchAndWayBack() {
        Material hide = shop.materials.add(new Material(0, "Hide glue", "glue", "7", "water and warmth", "", false, 1));
        desk.post(
                fresh + "DONE",
                "at",
                "2026-11-04T11:00",
                "minutes",
                "18",
                "material_id",
                Long.toString(hide.id()),
                "material",
                "1 to 2 by mass",
                "hand",
                "bench");
        Writing written = shop.diary.listNow(visit.id()).get(0).writing();
        assertThat(written)
                .returns(18, Writing::minutes)
                .returns(Instant.parse("2026-11-04T11:00:00Z"), Writing::at)
                .returns("Hide glue, batch 7; 1 to 2 by mass", Writing::material)
                .returns("water and warmth", Writing::reversibleWith);
    }

    @Test
    void minutesLeftEmptyAreCountedFromTheStart() {
        shop.diary.write(Writing.started(glue, Instant.parse("2026-11-04T10:40:00Z"), "bench"), shop.clock.instant());
        desk.post(fresh + "DONE", "at", "2026-11-04T11:00", "hand", "bench");
        assertThat(shop.diary.listNow(visit.id()).get(1).writing().minutes()).isEqualTo(20);
    }

    @Test
    void aFormThatStillShowsItsMinuteKeepsItsSecond() {
        shop.clock.set("2026-11-04T13:15:40Z");
        shop.tap.start(glue.id(), "bench", shop.clock.instant());
        shop.clock.pass(Duration.ofSeconds(10));
        OpenedDesk.Answer form = desk.get(fresh + "DONE");
        desk.post(
                fresh + "DONE",
                "at",
                form.page().select("[name=at]").val(),
                "at_filled",
                form.page().select("[name=at_filled]").val(),
                "at_second",
                form.page().select("[name=at_second]").val(),
                "hand",
                "bench");
        assertThat(shop.diary.listNow(visit.id()))
                .extracting(entry -> entry.writing().what())
                .containsExactly(DiaryEvent.STARTED, DiaryEvent.DONE);
    }

    @Test
    void aLateEntryIsMarked() {
        OpenedDesk.Answer page =
                desk.postAndFollow(fresh + "DONE", "at", "2026-11-03T11:00", "minutes", "20", "hand", "bench");
        assertThat(page.words(".diary"))
                .isEqualTo(
                        "3 November 2026 11:00 “warm, glue, clamp” done (20 min hands-on, hand: bench, written late, on 4 Nov"
                                + " 2026, 13:15) correct take out");
    }

    @Test
    void aCorrectionIsFilledWithWhatStandsAndMarksItself() {
        DiaryEntry entry = shop.diary.write(
                Writing.done(glue, shop.clock.instant(), 20, "bench").withRemark("two clamps"), shop.clock.instant());
        shop.clock.pass(Duration.ofHours(1));
        String address = "/diary/" + entry.id() + "/correct";
        OpenedDesk.Answer form = desk.get(address);
        assertThat(form.page().select("[name=remark]").text()).isEqualTo("two clamps");
        assertThat(form.page().select("[name=minutes]").val()).isEqualTo("20");
        OpenedDesk.Answer page = desk.postAndFollow(
                address, "at", "2026-11-04T13:10", "minutes", "22", "remark", "three clamps", "hand", "bench");
        assertThat(page.words(".diary"))
                .isEqualTo(
                        "4 November 2026 13:10 “warm, glue, clamp” done (22 min hands-on, hand: bench, corrected on 4 Nov 2026,"
                                + " 14:15) three clamps correct take out");
        assertThat(desk.post(address, "at", "2026-11-04T13:12", "remark", "four", "hand", "bench")
                        .lines(".problems li"))
                .containsExactly(
                        "Somebody else corrected this entry while the form was open. Open the work page, look at what"
                                + " stands there now and correct that; nothing was overwritten.");
    }

    @Test
    void notDryAsksForHoursAndLengthensTheWait() {
        shop.diary.write(Writing.done(glue, Instant.parse("2026-11-03T21:00:00Z"), 20, "bench"), shop.clock.instant());
        OpenedDesk.Answer refused =
                desk.post(fresh + "NOT_DRY", "at", "2026-11-04T13:15", "more_hours", "0.1", "hand", "bench");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .containsExactly("The further wait is 0.1; allowed is 0.25 to 2000 h.");
        OpenedDesk.Answer page =
                desk.postAndFollow(fresh + "NOT_DRY", "at", "2026-11-04T13:15", "more_hours", "8", "hand", "bench");
        assertThat(page.words(".answer")).isEqualTo("Left alone until 21:15.");
    }

    @Test
    void allProblemsAreListedAtOnceAndWhatWasTypedStays() {
        OpenedDesk.Answer refused = desk.post(
                fresh + "NOTE",
                "at",
                "2026-11-05T09:00",
                "minutes",
                "-3",
                "remark",
                " ",
                "material",
                "chalk",
                "hand",
                "bench");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .containsExactly(
                        "The time 5 Nov 2026, 09:00 lies ahead; the diary takes what has been done, up to now, 4 Nov 2026, 13:15.",
                        "The hands-on minutes is “-3”; allowed is a whole number from 0 to 1440.",
                        "The note is empty. Write a few words.");
        assertThat(refused.page().select("#f-material").val()).isEqualTo("chalk");
    }

    @Test
    void aTimeBeforeTheReceiptOrNoTimeIsRefused() {
        assertThat(desk.post(fresh + "DONE", "at", "2026-10-25T09:00", "hand", "bench")
                        .lines(".problems li"))
                .containsExactly(
                        "The time 25 Oct 2026, 09:00 lies before the receipt on 26 October 2026; choose that day or a later"
                                + " one.");
        assertThat(desk.post(fresh + "DONE", "at", "this morning", "hand", "bench")
                        .lines(".problems li"))
                .containsExactly(
                        "The time is “this morning”, which is no time. Write day and time, such as 2026-03-14T09:30.");
    }

    @Test
    void aNoteNeedsNoStep() {
        OpenedDesk.Answer page = desk.postAndFollow(
                "/visits/" + visit.id() + "/diary/new",
                "at",
                "2026-11-04T13:00",
                "remark",
                "Owner called.",
                "hand",
                "bench");
        assertThat(page.words(".diary"))
                .isEqualTo("4 November 2026 13:00 Note (hand: bench) Owner called. correct take out");
    }

    @Test
    void aStepOfAnotherVisitIsNotWrittenHere() {
        Visit other = shop.inWork("Cello", null, "seam");
        OpenedDesk.Answer answer = desk.get("/visits/" + visit.id() + "/diary/new?what=DONE&step="
                + shop.step(other, "warm, glue, clamp").id());
        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.words(".answer")).isEqualTo("There is no step 5 of visit 2026-001 in this shop.");
    }
}
