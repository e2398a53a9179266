package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.instrument.Visit;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkPageTest {
    @TempDir
    Path folder;

    private Shop shop;
    private Visit visit;
    private OpenedDesk desk;
    private String work;

    @BeforeEach
    void open() {
        shop = new Shop(folder);
        visit = shop.inWork("Viola", null, "seam", "pegs-eased");
        desk = shop.open();
        work = "/visits/" + visit.id() + "/work";
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void stepsStandUnderTheirTreatmentsInOrder() {
        OpenedDesk.Answer page = desk.get(work);
        assertThat(page.words("h1")).isEqualTo("Work, visit 2026-001");
        assertThat(page.words(".answer")).isEqualTo("Next: slacken strings, clean old glue with warm water.");
        assertThat(page.lines(".steps h2")).containsExactly("Glue the open seam", "Ease and refit the pegs");
        assertThat(page.lines(".steps .step"))
                .containsExactly(
                        "slacken strings, clean old glue with warm water",
                        "warm, glue, clamp",
                        "clamps off, wipe, tap check",
                        "ease and compound existing pegs");
        assertThat(page.lines(".steps .for").get(1))
                .isEqualTo(
                        "not begun; about 15 min (10 – 30 min), then 16 h (4 – 24 h), nothing else on the instrument meanwhile;"
                                + " needs hot glue, clamp");
    }

    @Test
    void aStepMovesIsLeftOutAndTakenBack() {
        long pegs = shop.step(visit, "ease and compound existing pegs").id();
        desk.post("/steps/" + pegs + "/earlier");
        assertThat(shop.order(visit).get(2)).isEqualTo("ease and compound existing pegs");
        desk.post("/steps/" + pegs + "/later");
        OpenedDesk.Answer out = desk.postAndFollow("/steps/" + pegs + "/drop");
        assertThat(out.words(".notice")).isEqualTo("Left out: “ease and compound existing pegs”. Take it back");
        assertThat(out.words("summary")).isEqualTo("One step was left out");
        desk.post(out.page().select(".notice form").attr("action"));
        assertThat(shop.order(visit)).hasSize(4).endsWith("ease and compound existing pegs");
    }

    @Test
    void aStepTheDiaryTellsOfStays() {
        long pegs = shop.step(visit, "ease and compound existing pegs").id();
        desk.post("/steps/" + pegs + "/start");
        assertThat(desk.postAndFollow("/steps/" + pegs + "/drop").words(".notice"))
                .isEqualTo(
                        "“ease and compound existing pegs” stays, since the diary tells of it. Take its entries out first, or"
                                + " write what happened instead.");
    }

    @Test
    void aStepIsAddedBesideTheAgreementAndThePageSaysWhatThatMeans() {
        OpenedDesk.Answer page = desk.postAndFollow(
                "/visits/" + visit.id() + "/steps/new",
                "name",
                "look at the bar with the mirror",
                "hands_typical",
                "12,5",
                "needs",
                "mirror",
                "blocks",
                "no");
        assertThat(page.lines(".steps h2")).endsWith("Beside the agreement");
        assertThat(page.words("main"))
                .contains(
                        "A step beside the agreement is not in what the owner said yes to. Tell the owner before it costs more.");
        assertThat(shop.step(visit, "look at the bar with the mirror"))
                .returns(13, Step::handsTypicalMin)
                .returns(13, Step::handsLowMin)
                .returns(0.0, Step::waitTypicalH);
    }

    @Test
    void allProblemsOfAStepAreListedAtOnceAndWhatWasTypedStays() {
        OpenedDesk.Answer refused = desk.post(
                "/visits/" + visit.id() + "/steps/new", "name", "", "hands_typical", "soon", "wait_typical", "99999");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .containsExactly(
                        "What is done is empty. Write a few words.",
                        "The hands-on time is “soon”, which is not a number. Allowed is 0 to 6000 min, such as 12.5 or 12,5.",
                        "The wait is 99999; allowed is 0 to 10000 h.");
        assertThat(refused.page().select("#f-hands_typical").val()).isEqualTo("soon");
    }

    @Test
    void threeFiguresThatDoNotRiseAreRefused() {
        assertThat(desk.post(
                                "/visits/" + visit.id() + "/steps/new",
                                "name",
                                "x",
                                "hands_low",
                                "20",
                                "hands_typical",
                                "10")
                        .lines(".problems li"))
                .containsExactly(
                        "The hands-on time is 20, usually 10, at most 10 min; the three must rise. Change them, or leave"
                                + " the first and last empty.");
    }

    @Test
    void aChangeFromAnOldFormIsRefused() {
        long pegs = shop.step(visit, "ease and compound existing pegs").id();
        String[] form = {"name", "ease pegs", "hands_typical", "20", "version", "1"};
        assertThat(desk.post("/steps/" + pegs + "/change", form).status()).isEqualTo(302);
        assertThat(desk.post("/steps/" + pegs + "/change", form).lines(".problems li"))
                .containsExactly(
                        "Somebody else changed this while the form was open; nothing was overwritten. What stands now and"
                                + " what you typed are shown below where they differ. Mend your fields, then save again.");
    }

    @Test
    void aGluedStepWithoutAMaterialIsPointedOut() {
        Step glue = shop.step(visit, "warm, glue, clamp");
        desk.post("/steps/" + glue.id() + "/start", "from", "work");
        shop.clock.pass(Duration.ofMinutes(20));
        OpenedDesk.Answer page = desk.postAndFollow("/steps/" + glue.id() + "/done", "from", "work");
        assertThat(page.words(".notice p"))
                .isEqualTo("In the diary: “warm, glue, clamp” done, 13:35. 20 min hands-on. No material is named yet.");
        assertThat(page.lines(".word")).containsExactly("The diary names no material for it yet.");
        assertThat(page.words("main")).contains("20 min hands-on so far, as the diary tells.");
    }

    @Test
    void theInstrumentsStoryTellsWhatWasDoneWhen() {
        Step glue = shop.step(visit, "warm, glue, clamp");
        shop.diary.write(Writing.started(glue, shop.clock.instant(), "Ada"), shop.clock.instant());
        shop.clock.pass(Duration.ofMinutes(20));
        shop.diary.write(
                Writing.done(glue, shop.clock.instant(), 20, "Ada")
                        .withMaterial("hot glue, 1 to 2", "water and warmth")
                        .withRemark("62 mm at the upper bout"),
                shop.clock.instant());
        OpenedDesk.Answer story = desk.get("/instruments/" + visit.instrumentId());
        assertThat(story.lines(".stage > h3")).containsExactly("Receipt", "Work");
        assertThat(story.words(".stage:has(.diary) .told > p:first-child"))
                .isEqualTo("Left alone until tomorrow 05:35.");
        assertThat(story.words(".diary"))
                .isEqualTo(
                        "4 November 2026 13:35 “warm, glue, clamp” done (20 min hands-on, hand: Ada) With hot glue, 1 to 2"
                                + " (undone with water and warmth) 62 mm at the upper bout");
        assertThat(story.page().select(".stage a[href=" + work + "]").text()).isEqualTo("Open the work");
    }

    @Test
    void workOnAVisitThatIsNotThereSaysSo() {
        OpenedDesk.Answer answer = desk.get("/visits/99/work");
        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.words(".answer")).isEqualTo("There is no visit 99 in this shop.");
    }
}
