package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.ledger.Settings;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkbenchPageTest {
    private static final String WORKBENCH = "/visits/1/agreement";

    @TempDir
    Path folder;

    private OldViola shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new OldViola(folder);
        desk = shop.open();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void anEmptyProposalSaysSoAndNamesTheFindings() {
        OpenedDesk.Answer page = desk.get(WORKBENCH);
        assertThat(page.words("p.answer")).isEqualTo("Nothing is proposed yet.");
        assertThat(page.lines(".findings .seen"))
                .containsExactly(
                        "Open seam (top), lower bout, 84.0 ± 2.0 mm hinders playing",
                        "Wing crack, top, treble side, 31.0 ± 2.0 mm",
                        "Chipped varnish, back, 12.0 ± 2.0 mm");
        assertThat(page.lines(".findings .about").get(0))
                .isEqualTo("Nothing is proposed; it stays as it is."
                        + " What speaks for what for open seam (top), lower bout, 84.0 ± 2.0 mm"
                        + " Propose something for open seam (top), lower bout, 84.0 ± 2.0 mm");
        assertThat(page.page().select(".scopes")).isEmpty();
    }

    @Test
    void fittingTreatmentsAreOfferedFirst() {
        OpenedDesk.Answer page = desk.get("/visits/1/treatments?finding=" + shop.crack);
        assertThat(page.words("h1")).isEqualTo("What could be done about it");
        assertThat(page.lines("form > fieldset .title"))
                .containsExactly(
                        "Close the crack from outside",
                        "Support the crack from inside, through the sound-hole",
                        "Close the crack with the top off, and stud it");
        assertThat(page.lines("details .title"))
                .hasSize(TreatmentTemplates.list().size() - 3);
        assertThat(page.words("form > fieldset .templateoption:eq(1) .about"))
                .isEqualTo("A clean crack that closes by hand can be glued without opening the body."
                        + " Playing order, 25 min – 1 h 35 by hand for one crack; can be taken back in part.");
    }

    @Test
    void whatIsTickedBecomesLinesThatAnswerTheFinding() {
        OpenedDesk.Answer page = desk.postAndFollow(
                "/visits/1/treatments",
                "template",
                "crack-outside",
                "template",
                "studs-through-sound-hole",
                "template",
                "no-such-template",
                "finding",
                Long.toString(shop.crack));
        assertThat(page.lines(".proposal .title"))
                .containsExactly(
                        "Close the crack from outside", "Support the crack from inside, through the sound-hole");
        assertThat(page.lines(".findings .about").get(1))
                .startsWith("Close the crack from outside; Support the crack from inside, through the sound-hole.");
    }

    @Test
    void theWaysStandSideBySideEachWithPriceHoursAndConsequence() {
        shop.proposeOneOfEachTier();
        OpenedDesk.Answer page = desk.get(WORKBENCH);
        assertThat(page.lines(".scope h3"))
                .containsExactly("Leave as it is", "Playing order", "Sound", "Full restoration");
        Proposal proposal = shop.proposal();
        List<String> prices = proposal.offers().list().stream()
                .skip(1)
                .map(offer -> proposal.words().range(offer.sum().price()))
                .map(words -> words.replace('\u00a0', ' '))
                .toList();
        assertThat(page.lines(".scope .price").stream()
                        .map(words -> words.replace('\u00a0', ' '))
                        .toList())
                .containsExactly("nothing", prices.get(0), prices.get(1), prices.get(2));
        assertThat(page.words("section[aria-labelledby=scope-LEAVE]"))
                .isEqualTo(
                        "Leave as it is Nothing is done to it. It stays as it was found. nothing No work, so no price."
                                + " What stays, and what happens then Without “Glue the open seam”: The gap grows with dry weather,"
                                + " dirt gets in, and the plate may crack where the seam still holds. And what the next way leaves,"
                                + " too. The owner chose this");
        assertThat(page.words("section[aria-labelledby=scope-FULL]"))
                .contains(
                        "Is done, with all of the way before Retouch the loss with spirit colours",
                        "Can it be undone? Retouch the loss with spirit colours: can be taken back in part",
                        "Nothing of what is proposed stays undone.");
    }

    @Test
    void theRulesOfHoursAndMoneyAreStated() {
        shop.propose("seam");
        assertThat(desk.get(WORKBENCH).words())
                .contains(
                        "Hours are work of hands only; waiting for glue and varnish comes on top. Each step has a least, a"
                                + " usual and a most time; 10,000 runs of the whole job are drawn from them, quick and slow instruments"
                                + " among them, and the range holds eight runs in ten. It is as good as those times are. What is found"
                                + " only after opening is not in it.")
                .contains(
                        "An hour costs EUR 68.00 before tax. A line’s expected price is its expected minutes at that rate,"
                                + " rounded half up to 0.01, with its materials; these prices add up exactly. 19 % tax is reckoned once,"
                                + " on the sum, rounded half up to 0.01. Ends of ranges are rounded outward to full fives. The ranges of"
                                + " lines do not add up to the range of the whole: it is unlikely that every line goes slowly.");
    }

    @Test
    void aRateOfNothingIsSaidWithTheWayToSetIt() {
        shop.settings.put(new Settings(
                "s", "", List.of("Ines"), "EUR", Money.NOTHING, 0, false, java.time.LocalTime.of(17, 30), false));
        shop.propose("seam");
        OpenedDesk.Answer page = desk.get(WORKBENCH);
        assertThat(page.words(".caveat"))
                .isEqualTo("The price of an hour is not set, so only materials are counted. Set it on the shelf.");
        assertThat(page.page().select(".caveat a").attr("href")).isEqualTo("/shelf");
        assertThat(page.words()).contains("The price of an hour is not set. A line’s", "No tax is added.");
    }

    @Test
    void whatIsPutAwayCanBeBroughtBackAtOnceOrLater() {
        Treatment line = shop.propose("seam", shop.seam);
        String place = "/treatments/" + line.id() + "/place";
        OpenedDesk.Answer away = desk.postAndFollow(place, "what", "away");
        assertThat(away.words(".putaway[role=status]")).isEqualTo("Put away: Glue the open seam. Bring it back");
        assertThat(away.page().select(".proposal > li")).isEmpty();
        assertThat(desk.get(WORKBENCH).words("details summary")).isEqualTo("Put away (1)");
        assertThat(desk.postAndFollow(place, "what", "back").lines(".proposal .title"))
                .containsExactly("Glue the open seam");
    }

    @Test
    void linesAreMovedWithoutAMouse() {
        List<Treatment> lines = shop.proposeOneOfEachTier();
        OpenedDesk.Answer page =
                desk.postAndFollow("/treatments/" + lines.get(1).id() + "/place", "what", "earlier");
        assertThat(page.lines(".proposal .title"))
                .containsExactly(
                        "Support the crack from inside, through the sound-hole",
                        "Glue the open seam",
                        "Retouch the loss with spirit colours");
        assertThat(page.page().select(".moves button").get(0).attr("aria-label"))
                .isEqualTo("Move earlier: Support the crack from inside, through the sound-hole");
    }

    @Test
    void theWorkAroundTheJobIsAddedWithOneButtonOnce() {
        shop.propose("seam");
        String[] form = desk.get(WORKBENCH).page().select(".jobparts input").eachAttr("value").stream()
                .flatMap(key -> List.of("template", key).stream())
                .toArray(String[]::new);
        OpenedDesk.Answer page = desk.postAndFollow("/visits/1/treatments", form);
        assertThat(page.lines(".proposal .title"))
                .containsExactly(
                        "Glue the open seam",
                        "Receiving: receipt, parts counted, settling in the room",
                        "Examination: pictures, light, mirror, measures, findings",
                        "Proposal: ways worked out, talked over, agreed",
                        "Playing it in the workshop",
                        "Report, pictures after, care sheet",
                        "Handover: played, explained, signed back");
        assertThat(page.page().select(".jobparts")).isEmpty();
    }

    @Test
    void aVisitThatIsNotThereIsSaidSo() {
        OpenedDesk.Answer page = desk.get("/visits/7/agreement");
        assertThat(page.status()).isEqualTo(404);
        assertThat(page.words("p.answer")).isEqualTo("There is no visit 7 in this shop.");
    }
}
