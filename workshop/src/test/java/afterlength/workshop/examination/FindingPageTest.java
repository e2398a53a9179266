package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.desk.OpenedDesk.Answer;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FindingPageTest {
    private static final String PAGE = "/visits/1/examination";

    @TempDir
    Path root;

    private ExaminedShop shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(root);
        desk = OpenedDesk.with(shop.rooms());
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Answer write(String path, String observation, String place, String size_mm, String reason) {
        return desk.postAndFollow(
                path,
                "part",
                "top",
                "kind",
                "wing crack",
                "observation",
                observation,
                "place",
                place,
                "size_mm",
                size_mm,
                "size_plus_minus_mm",
                size_mm.isEmpty() ? "" : "0,5",
                "size_reason",
                reason,
                "age",
                "OLD",
                "hinders_playing",
                "YES",
                "gets_worse",
                "UNKNOWN",
                "interpretation",
                "dried out",
                "hand",
                "M. Muster",
                "photograph",
                "1");
    }

    @Test
    void anEmptyExaminationSaysSoAndOffersTheVocabulary() {
        Answer page = desk.get(PAGE);
        assertThat(page.words(".answer")).isEqualTo("No finding written down yet.");
        assertThat(page.page().select("#parts option").eachAttr("value")).startsWith("top", "back");
        assertThat(page.page().select("#kinds option")).hasSize(121);
        assertThat(page.page().select("input[name=hand]").val()).isEqualTo("bench");
    }

    @Test
    void aFindingIsShownWithObservationAndInterpretationApart() {
        shop.take(TestPictures.jpeg(60, 40), Moment.BEFORE, "front");
        Answer page = write(PAGE, "Along the grain, <level>.", "bass side", "42", "");
        assertThat(page.words(".answer")).isEqualTo("One finding, one hinders playing.");
        assertThat(page.words(".findings .seen")).isEqualTo("wing crack, top Along the grain, <level>.");
        assertThat(page.lines(".findings .about"))
                .containsExactly(
                        "bass side · 42.0 ± 0.5 mm · old · hinders playing",
                        "Taken to mean: dried out",
                        "Seen by M. Muster, 2 Mar 2026, 09:15");
        assertThat(page.page().select(".findings img").attr("alt")).isEqualTo("front, before work");
        assertThat(page.page().select(".word")).isEmpty();
    }

    @Test
    void aRelativeWordAndAMissingPlaceAreNotedButNeverStopAnyone() {
        Answer page = write(PAGE, "A small crack.", "", "", "");
        assertThat(page.words(".word"))
                .isEqualTo("Draft: still without its place and its size, or the reason why it has none.");
        assertThat(page.words(".findings .hint"))
                .isEqualTo("“small”: another reader cannot tell how much that is. A size or an extent can.");
    }

    @Test
    void allProblemsStandBesideTheirFieldsAndNothingTypedIsLost() {
        Answer page = desk.post(
                PAGE,
                "part",
                " ",
                "kind",
                "wing crack",
                "size_mm",
                "42,5",
                "size_reason",
                "cannot be reached",
                "age",
                "OLD",
                "hinders_playing",
                "MAYBE",
                "gets_worse",
                "NO",
                "hand",
                "");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.lines(".problem"))
                .containsExactlyInAnyOrder(
                        "The part is empty. Write a few words.",
                        "The size has no ±. Write how far it may be off, such as 0.5 for a steel rule or 2 for an estimate.",
                        "There is a size, and a reason why there is none. Keep one of the two.",
                        "Whether it hinders playing is “MAYBE”; choose one of: yes, no, unknown.",
                        "The hand is empty. Write a few words.");
        assertThat(page.page().select("[name=size_mm]").val()).isEqualTo("42,5");
        assertThat(shop.findings.listNow(1)).isEmpty();
    }

    @Test
    void aCorrectionShowsTheEarlierWording() {
        write(PAGE, "first words", "bass side", "42", "");
        Answer form = desk.get("/findings/1/correct");
        assertThat(form.page().select("[name=observation]").text()).isEqualTo("first words");
        assertThat(form.page().select("[name=size_plus_minus_mm]").val()).isEqualTo("0.5");
        Answer page = write("/findings/1/correct", "better words", "bass side", "43", "");
        assertThat(page.words(".findings > li > .seen")).isEqualTo("wing crack, top better words");
        assertThat(page.words("summary")).isEqualTo("Earlier wording (1)");
        assertThat(page.words(".earlier .seen")).isEqualTo("wing crack, top first words");
        assertThat(desk.get("/findings/1/correct")
                        .page()
                        .select("[name=observation]")
                        .text())
                .as("an old link opens the latest wording")
                .isEqualTo("better words");
    }

    @Test
    void whoCorrectsSecondIsToldAndKeepsHisWords() {
        write(PAGE, "first words", "bass side", "42", "");
        write("/findings/1/correct", "better words", "bass side", "43", "");
        Answer page = write("/findings/1/correct", "other words", "bass side", "43", "");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words("#problem-part"))
                .isEqualTo(
                        "Somebody else corrected or withdrew this finding while the form was open. Open it in a second "
                                + "tab, bring over what is missing and save there; nothing was overwritten.");
        assertThat(page.page().select("[name=observation]").text()).isEqualTo("other words");
    }

    @Test
    void withdrawingCanBeUndone() {
        write(PAGE, "first words", "bass side", "42", "");
        Answer page = desk.postAndFollow("/findings/1/withdraw");
        assertThat(page.words(".answer")).isEqualTo("No finding written down yet.");
        assertThat(page.words(".undo p")).isEqualTo("Withdrawn: wing crack, top. The words are kept.");
        Answer undone = desk.postAndFollow(page.page().select(".undo").attr("action"));
        assertThat(undone.words(".answer")).isEqualTo("One finding, one hinders playing.");
        assertThat(undone.page().select("details")).isEmpty();
    }

    @Test
    void howItWasLookedAtIsWrittenAndWithdrawn() {
        Answer refused = desk.post("/visits/1/sittings", "hand", "M. Muster", "humidity_pct", "45");
        assertThat(refused.words("#problem-other_means"))
                .isEqualTo("No light and no tool is named. Tick at least one, or write your own.");
        Answer page = desk.postAndFollow(
                "/visits/1/sittings",
                "means",
                "daylight",
                "means",
                "raking light",
                "other_means",
                "bent wire",
                "temperature_c",
                "20",
                "humidity_pct",
                "45",
                "remark",
                "Linings not reached.",
                "hand",
                "M. Muster");
        assertThat(page.words(".findings")).contains("daylight, raking light, bent wire Linings not reached.");
        assertThat(page.words(".findings"))
                .contains("20 °C, 45 % RH; wood settles at 8.5 ± 0.5 % · M. Muster, 2 Mar 2026, 09:15");
        Answer withdrawn = desk.postAndFollow("/sittings/1/withdraw");
        assertThat(withdrawn.words(".undo p"))
                .isEqualTo("Withdrawn: daylight, raking light, bent wire. The words are kept.");
        assertThat(desk.postAndFollow(withdrawn.page().select(".undo").attr("action"))
                        .words(".findings"))
                .contains("daylight, raking light, bent wire");
    }

    @Test
    void theInstrumentsPageTellsTheExamination() {
        Answer empty = desk.get("/instruments/1");
        assertThat(empty.words(".stage .answer")).isEqualTo("Not examined yet.");
        shop.take(TestPictures.jpeg(60, 40), Moment.BEFORE, "front");
        write(PAGE, "first words", "bass side", "42", "");
        shop.measures.add(shop.measure(Moment.BEFORE, Quantity.PROJECTION, 29.8, 0.2, 40));
        shop.measures.add(shop.measure(Moment.AFTER, Quantity.PROJECTION, 32.1, 0.2, 40));
        shop.measures.add(shop.measure(Moment.BEFORE, Quantity.STOP, 220, 0.5, 40));
        Answer told = desk.get("/instruments/1");
        assertThat(told.words(".stage .answer")).isEqualTo("One finding, one hinders playing.");
        assertThat(told.lines(".stage tbody tr"))
                .isEqualTo(List.of(
                        "projection 29.8 ± 0.2 mm 32.1 ± 0.2 mm 2.3 ± 0.3 mm more", "stop 220.0 ± 0.5 mm before work"));
        assertThat(told.page().select(".stage .action").eachAttr("href")).contains(PAGE);
    }

    @Test
    void anUnknownVisitOrFindingIsSaidInWords() {
        assertThat(desk.get("/visits/9/examination").status()).isEqualTo(404);
        assertThat(desk.get("/findings/77/correct").words(".answer")).isEqualTo("There is no finding 77 in this shop.");
    }
}
