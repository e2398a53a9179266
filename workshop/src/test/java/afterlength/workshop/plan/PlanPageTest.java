package afterlength.workshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.instrument.Visit;
import java.nio.file.Path;
import java.time.LocalDate;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanPageTest {
    private static final LocalDate NINTH = LocalDate.of(2026, 11, 9);

    @TempDir
    Path folder;

    private PlannedShop shop;
    private OpenedDesk desk;
    private Visit viola;

    @BeforeEach
    void open() {
        shop = new PlannedShop(folder);
        viola = shop.inWork("Viola", NINTH, "seam", "post");
        shop.inWork("Violin", LocalDate.of(2026, 11, 20), "pegs-eased");
        shop.done(viola, 0);
        shop.plan();
        desk = shop.open();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void theWeekIsDrawnAndListedAndNothingIsLate() {
        OpenedDesk.Answer week = desk.get("/plan");
        assertThat(week.words(".answer")).isEqualTo("Everything is ready as promised.");
        assertThat(week.page().select("figure.week svg desc").text()).contains("2 instruments");
        assertThat(week.words("dl.plan"))
                .contains("warm, glue, clamp – Viola", "Hot glue for one joint", "Ready: Viola.");
    }

    @Test
    void anEmptyShopSaysThatThereIsNothing(@TempDir Path other) {
        try (OpenedDesk empty = new PlannedShop(other).open()) {
            assertThat(empty.get("/plan").words(".answer")).isEqualTo("Nothing is waiting for hands.");
            assertThat(empty.get("/").words("main")).doesNotContain("The plan of the week");
        }
    }

    @Test
    void todayFollowsThePlanAndSaysWhenAndWho() {
        OpenedDesk.Answer today = desk.get("/");
        assertThat(today.lines(".hands .for")).anyMatch(line -> line.startsWith("Planned for now, hands: "));
        assertThat(today.page().select("a[href=/plan]")).isNotEmpty();
    }

    /** 150 h from Wednesday 10:00 end on Tuesday 10 November 16:00; the glue then waits 16 h, so it is Wednesday 11 November. */
    @Test
    void notDryLeadsToWhatItChangesAndNothingIsPromisedBeforeItIsTaken() {
        OpenedDesk.Answer draft = notDry();
        assertThat(draft.words(".because"))
                .isEqualTo(
                        "“slacken strings, clean old glue with warm water” on Viola is not ready yet. It waits 150 h more.");
        Element row = draft.page()
                .select("#plan-moved tr[data-visit=" + viola.id() + "]")
                .get(0);
        assertThat(row.select(".old").text()).isEqualTo("Mon 9 Nov");
        assertThat(row.select(".ready").text()).endsWith("too late");
        assertThat(row.select(".new").text()).isEqualTo("Wed 11 Nov");
        assertThat(shop.visits.get(viola.id()).promisedOn()).isEqualTo(NINTH);
        assertThat(draft.words("#plan-moved")).contains("steps change their day");
        OpenedDesk.Answer taken = to(
                draft.page().select("#plan-moved form").attr("action"),
                "which",
                "moved",
                "promise",
                Long.toString(viola.id()));
        assertThat(taken.words(".notice p")).isEqualTo("The plan is taken. Today follows it.");
        assertThat(shop.visits.get(viola.id()).promisedOn()).isEqualTo(LocalDate.of(2026, 11, 11));
        PlannedVisit kept = shop.plans.kept().findVisit(viola.id()).orElseThrow();
        assertThat(kept.promisedBefore()).isEqualTo(NINTH);
        assertThat(kept.promisedOn()).isEqualTo(LocalDate.of(2026, 11, 11));
    }

    @Test
    void aPromiseThatIsNotTickedStays() {
        OpenedDesk.Answer draft = notDry();
        desk.post(draft.page().select("#plan-moved form").attr("action"), "which", "moved");
        assertThat(shop.visits.get(viola.id()).promisedOn()).isEqualTo(NINTH);
        assertThat(shop.plans.kept().because()).contains("is not ready yet");
    }

    @Test
    void takingNeitherLeavesThePlanAsItWas() {
        long before = shop.plans.kept().id();
        notDry();
        assertThat(shop.plans.kept().id()).isEqualTo(before);
    }

    @Test
    void aStopAnswersAtOnceAndTheOldOrderStands() {
        OpenedDesk.Answer draft = notDry();
        String address = draft.page().select("#plan-moved form").attr("action").replace("/take", "");
        OpenedDesk.Answer stopped = to(address + "/stop");
        assertThat(stopped.page().select("#plan-moved table")).isNotEmpty();
        assertThat(stopped.page().select("#plan-better").attr("data-working")).isEmpty();
    }

    @Test
    void aDraftThatIsForgottenIsPlannedAnew() {
        OpenedDesk.Answer again = desk.get("/plan/drafts/long-ago-1");
        assertThat(again.status()).isEqualTo(302);
        assertThat(to("/plan/drafts/long-ago-1/take", "which", "better").words(".because"))
                .isEqualTo("Planned again by hand.");
    }

    @Test
    void whoIsIllIsWrittenDownAndPlannedAround() {
        OpenedDesk.Answer wrong =
                desk.post("/plan/absences/new", "away", "Zoe", "from_day", "2026-11-06", "to_day", "2026-11-05");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.lines(".problems li"))
                .containsExactly(
                        "Who is away is “Zoe”; choose one of: Ada, Ben.",
                        "The last day 2026-11-05 lies before the first, 2026-11-06; choose that day or a later one.");
        OpenedDesk.Answer draft =
                to("/plan/absences/new", "away", "Ben", "from_day", "2026-11-05", "to_day", "2026-11-06");
        assertThat(draft.words(".because")).isEqualTo("Ben is away from 5 November 2026 to 6 November 2026.");
        assertThat(desk.get("/plan").words("main")).contains("Ben is away.", "Ben, Thu 5 Nov – Fri 6 Nov");
        OpenedDesk.Answer back = to("/plan/absences/1/take-back");
        assertThat(back.words(".because"))
                .isEqualTo("Ben is at the bench after all from 5 November 2026 to 6 November 2026.");
        assertThat(desk.get("/plan").words("#away, section[aria-labelledby=away]"))
                .contains("Nobody");
    }

    @Test
    void whatIsUrgentIsPlannedAgainWithItsNewDay() {
        OpenedDesk.Answer draft = to("/plan/visits/" + viola.id(), "urgency", "URGENT", "promised", "2026-11-06");
        assertThat(draft.words(".because")).isEqualTo("Viola is wanted: urgent, promised for 6 November 2026.");
        assertThat(desk.get("/plan/visits/" + viola.id())
                        .page()
                        .select("input[checked]")
                        .attr("value"))
                .isEqualTo("URGENT");
        assertThat(desk.post("/plan/visits/" + viola.id(), "urgency", "URGENT", "promised", "2026-01-06")
                        .words(".problems li"))
                .isEqualTo(
                        "The promised day 2026-01-06 lies before the receipt on 2026-10-26; choose that day or a later one.");
    }

    @Test
    void hoursAndClampsAreChangedOnTheShelfAndATypedWordIsNotLost() {
        OpenedDesk.Answer wrong = desk.post(
                "/shelf/bench", "hours", "always", "glue", "", "warm_up", "30", "clamps", "0", "cupboard", "3");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.page().select("[name=hours]").text()).isEqualTo("always");
        assertThat(wrong.lines(".problems li"))
                .contains("How many joints can be clamped at once is “0”; allowed is a whole number from 1 to 99.");
        desk.post(
                "/shelf/bench",
                "hours",
                "Fri 10:00-16:00",
                "glue",
                "",
                "warm_up",
                "30",
                "clamps",
                "2",
                "cupboard",
                "1");
        assertThat(desk.get("/plan").lines("dl.plan dt"))
                .allMatch(day -> day.startsWith("Fri") || day.startsWith("Wed"));
    }

    @Test
    void aStepSaysWhyItStandsThere() {
        OpenedDesk.Answer why = desk.get("/plan/steps/" + shop.step(viola, 1).id());
        assertThat(why.words(".reasons")).contains("It could begin up to", "sooner, but");
        assertThat(desk.get("/plan/steps/99999").status()).isEqualTo(404);
    }

    @Test
    void whatIfsAreAnsweredOneByOneAndKeepNothing() throws InterruptedException {
        long before = shop.plans.kept().id();
        OpenedDesk.Answer page =
                follow(desk.get("/plan/what-if?without=" + shop.step(viola, 1).id()));
        String address = page.page().select("#wishes").attr("hx-get");
        for (int n = 0; n < 200 && page.page().select("#wishes[data-working]").size() > 0; n++) {
            Thread.sleep(100);
            page = desk.get(address);
        }
        assertThat(page.lines(".wishes dt"))
                .containsExactly(
                        "What if “warm, glue, clamp” were left out?",
                        "What if one more joint could be clamped at once?",
                        "What if one more instrument could dry free of dust?",
                        "What if Ada worked on Saturday 7 Nov from 09:00 to 13:00?",
                        "What if Ben worked on Saturday 7 Nov from 09:00 to 13:00?");
        assertThat(page.lines(".wishes dd").get(0)).startsWith("Ready sooner: Viola");
        assertThat(shop.plans.kept().id()).isEqualTo(before);
    }

    @Test
    void theCalendarHoldsHandsAndPromises() {
        String file = desk.get("/plan/calendar.ics").page().body().wholeText();
        assertThat(file).contains("SUMMARY:Promised: Viola", "DTSTART;VALUE=DATE:20261109", "warm\\, glue\\, clamp");
        assertThat(file).doesNotContain("Ilse Tamm");
    }

    private OpenedDesk.Answer to(String path, String... form) {
        return follow(desk.post(path, form));
    }

    /** Through every redirect. */
    private OpenedDesk.Answer follow(OpenedDesk.Answer answer) {
        OpenedDesk.Answer at = answer;
        while (!at.location().isEmpty()) {
            at = desk.get(at.location());
        }
        return at;
    }

    private OpenedDesk.Answer notDry() {
        return to(
                "/visits/" + viola.id() + "/diary/new?what=NOT_DRY&step="
                        + shop.step(viola, 0).id(),
                "more_hours",
                "150",
                "at",
                "2026-11-04T10:00",
                "hand",
                "Ada");
    }
}
