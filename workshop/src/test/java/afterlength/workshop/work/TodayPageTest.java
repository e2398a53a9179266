package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TodayPageTest {
    private static final LocalDate TENTH = LocalDate.of(2026, 11, 10);

    @TempDir
    Path folder;

    private Shop shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new Shop(folder);
        desk = shop.open();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void anEmptyShopBeginsFriendly() {
        OpenedDesk.Answer today = desk.get("/");
        assertThat(today.words("main"))
                .isEqualTo(
                        "Wednesday 4 November, 13:15 Today No instrument is in the house. A shop begins with somebody who"
                                + " brings an instrument. Take it in; what was seen, proposed and done will then tell itself here, day"
                                + " by day. Receive an instrument Give the shop its name and price per hour To look around first, try"
                                + " the demonstration in a second window: ./afterlength demo");
        assertThat(today.page().select("a.action").attr("href")).isEqualTo("/receive");
    }

    @Test
    void aStepIsStartedAndDoneByOneTapEach() {
        Visit viola = shop.inWork("Viola, about 1905", TENTH, "seam");
        long step = shop.steps.list(viola.id()).get(0).id();
        assertThat(desk.get("/").words(".answer"))
                .isEqualTo("Next: slacken strings, clean old glue with warm water – Viola, about 1905.");
        OpenedDesk.Answer begun = desk.postAndFollow("/steps/" + step + "/start");
        assertThat(begun.words(".notice p"))
                .isEqualTo("In the diary: “slacken strings, clean old glue with warm water” started, 13:15.");
        assertThat(begun.words(".answer"))
                .isEqualTo("Go on: slacken strings, clean old glue with warm water – Viola, about 1905.");
        shop.clock.pass(Duration.ofMinutes(25));
        OpenedDesk.Answer done = desk.postAndFollow("/steps/" + step + "/done");
        assertThat(done.words(".notice p"))
                .isEqualTo(
                        "In the diary: “slacken strings, clean old glue with warm water” done, 13:40. 25 min hands-on.");
        assertThat(done.words(".answer")).isEqualTo("Hands are free until 15:40.");
        assertThat(done.words(".reason"))
                .startsWith("Everything on the bench dries or is clamped. Then “warm, glue, clamp” can follow on Viola,"
                        + " about 1905.");
    }

    @Test
    void aLateTapWithoutSenseIsRefusedInWords() {
        Visit viola = shop.inWork("Viola", TENTH, "seam");
        String start = "/steps/" + shop.steps.list(viola.id()).get(0).id() + "/start";
        String key = "0b0f7c3e-8a52-4a34-9a77-2b6b1a1f8f10";
        assertThat(desk.post(start, "sent_key", "x").words("main"))
                .contains("The key of what was sent is “x”; it is 36 digits and hyphens that the page makes itself.");
        assertThat(desk.post(start, "sent_key", key, "sent_at", "noon").words("main"))
                .contains("The moment of a tap is “noon”; it is written such as 2026-11-04T13:15:00Z.");
        OpenedDesk.Answer old = desk.post(start, "sent_key", key, "sent_at", "2026-11-01T08:00:00Z");
        assertThat(old.status()).isEqualTo(400);
        assertThat(old.words("main"))
                .contains(
                        "This was tapped on 1 November 2026 and waited more than 3 days. Write it into the diary by hand");
        assertThat(shop.diary.listNow(viola.id())).isEmpty();
        OpenedDesk.Answer late = desk.postAndFollow(start, "sent_key", key, "sent_at", "2026-11-04T12:50:00Z");
        assertThat(late.words(".notice p")).endsWith("started, 12:50.");
        assertThat(desk.postAndFollow(start, "sent_key", key, "sent_at", "2026-11-04T12:50:00Z")
                        .words(".notice p"))
                .isEqualTo(late.words(".notice p"));
        assertThat(shop.diary.listNow(viola.id())).hasSize(1);
    }

    @Test
    void aTapByMistakeIsTakenBackAndPutInAgain() {
        Visit viola = shop.inWork("Viola", TENTH, "seam");
        long step = shop.steps.list(viola.id()).get(0).id();
        OpenedDesk.Answer begun = desk.postAndFollow("/steps/" + step + "/start");
        OpenedDesk.Answer out =
                desk.postAndFollow(begun.page().select(".notice form").attr("action"), "from", "today");
        assertThat(out.words(".notice p"))
                .isEqualTo("Taken out of the diary: “slacken strings, clean old glue with warm water” started, 13:15.");
        assertThat(out.words(".answer")).startsWith("Next: ");
        OpenedDesk.Answer again =
                desk.postAndFollow(out.page().select(".notice form").attr("action"), "from", "today");
        assertThat(again.words(".answer")).startsWith("Go on: ");
    }

    @Test
    void aSecondTapSaysWhatAlreadyHolds() {
        Visit viola = shop.inWork("Viola", TENTH, "seam");
        long step = shop.steps.list(viola.id()).get(0).id();
        desk.post("/steps/" + step + "/start");
        assertThat(desk.postAndFollow("/steps/" + step + "/start").words(".notice p"))
                .isEqualTo(
                        "Nothing new was written: “slacken strings, clean old glue with warm water” is already begun 13:15.");
    }

    @Test
    void whatCanBeDoneStandsWithItsPromiseItsTimeAndItsCautions() {
        shop.inWork("Viola", TENTH, "seam");
        OpenedDesk.Answer today = desk.get("/");
        assertThat(today.lines(".hands .for"))
                .containsExactly(
                        "Viola. Promised for 10 November 2026, in 6 days.",
                        "Hands: about 15 min (5 – 30 min); fits before closing at 18:00. Then it waits 2 h (30 min – 12 h)."
                                + " Needs warm water, thin knife.");
        assertThat(today.lines(".hands .caution"))
                .containsExactly(
                        "Strings whip when they break, and the post falls when tension goes: let all strings down evenly,"
                                + " pad under the tailpiece, keep eyes out of their line, and put no tension on anything that is"
                                + " still wet.",
                        "A blade slips or runs into a crack: keep both hands behind its edge, make small movements, stop at"
                                + " every crack.");
        assertThat(today.words("main"))
                .contains(
                        "These are general words. The data sheets of what you use, local rules and licensed practice come"
                                + " first.");
    }

    @Test
    void aTimerComesFromTheDiaryWhoeverAsksWhenever() {
        Visit viola = shop.inWork("Viola", TENTH, "seam");
        Step clean = shop.steps.list(viola.id()).get(0);
        shop.diary.write(Writing.done(clean, shop.clock.instant(), 10, "bench"), shop.clock.instant());
        shop.clock.pass(Duration.ofMinutes(90));
        OpenedDesk.Answer today = desk.get("/");
        assertThat(today.page().select("[data-left]").attr("data-left")).isEqualTo("1800");
        assertThat(today.words(".left")).isEqualTo("30 min left");
        assertThat(today.lines(".drying .for"))
                .containsExactly(
                        "Viola, until 15:15; done 13:15, waits of 30 min – 12 h are common. Nothing else on this"
                                + " instrument meanwhile.");
    }

    @Test
    void afterAWaitTheNextStepAsksForACheckAndTheWaitCanBeLengthened() {
        Visit viola = shop.inWork("Viola", TENTH, "seam");
        Step clean = shop.steps.list(viola.id()).get(0);
        shop.diary.write(Writing.done(clean, shop.clock.instant(), 10, "bench"), shop.clock.instant());
        shop.clock.pass(Duration.ofHours(3));
        OpenedDesk.Answer today = desk.get("/");
        assertThat(today.words(".caveat"))
                .isEqualTo(
                        "The usual wait after “slacken strings, clean old glue with warm water” ended 15:15. That is common"
                                + " practice, not a test: check that it is ready before you go on. It is not ready");
        desk.post(
                today.page().select(".caveat a").attr("href"),
                "more_hours",
                "2,5",
                "at",
                "2026-11-04T16:15",
                "hand",
                "bench");
        assertThat(desk.get("/").words(".answer")).isEqualTo("Hands are free until 18:45.");
    }

    @Test
    void everyOtherStageHasItsLineAndALink() {
        shop.receive("Violin just in", null);
        shop.propose(shop.receive("Violin proposed", null), "seam");
        shop.agree(shop.receive("Violin left as it is", null), List.of());
        Visit ready = shop.inWork("Violin ready", TENTH, "pegs-eased");
        shop.diary.write(
                Writing.done(shop.steps.list(ready.id()).get(0), shop.clock.instant(), 10, "bench"),
                shop.clock.instant());
        OpenedDesk.Answer today = desk.get("/");
        assertThat(today.lines(".register .line"))
                .containsExactly(
                        "Hand over: Violin ready all agreed steps are done 2026-004, received 26 October 2026, promised in 6 days",
                        "Examine: Violin just in no finding and no measure is written down yet 2026-001, received 26 October 2026",
                        "Ask for the owner's answer: Violin proposed the proposal is not agreed yet 2026-002, received 26 October"
                                + " 2026",
                        "List the steps: Violin left as it is it is agreed, and no step is listed 2026-003, received 26 October"
                                + " 2026");
        assertThat(today.page().select(".register a").eachAttr("href"))
                .containsExactly(
                        "/instruments/4#visit-4", "/visits/1/examination", "/visits/2/agreement", "/visits/3/work");
    }

    @Test
    void theHandAtAScreenIsChosenOnceAndWritten() {
        shop.settings.put(new Settings(
                "Shop", "", List.of("Ada", "Bruno Ö."), "EUR", Money.NOTHING, 0, false, LocalTime.of(18, 0), false));
        Visit viola = shop.inWork("Viola", TENTH, "seam");
        assertThat(desk.get("/").page().select("#f-hand option[selected]").text())
                .isEqualTo("Ada");
        assertThat(desk.get("/", "Cookie", "hand=Bruno+%C3%96.")
                        .page()
                        .select("#f-hand option[selected]")
                        .text())
                .isEqualTo("Bruno Ö.");
        assertThat(desk.get("/", "Cookie", "hand=%")
                        .page()
                        .select("#f-hand option[selected]")
                        .text())
                .isEqualTo("Ada");
        assertThat(desk.get("/", "Cookie", "hand=Nobody")
                        .page()
                        .select("#f-hand option[selected]")
                        .text())
                .isEqualTo("Ada");
        desk.post("/steps/" + shop.steps.list(viola.id()).get(0).id() + "/start");
        assertThat(shop.diary.listNow(viola.id()).get(0).writing().hand()).isEqualTo("Ada");
    }
}
