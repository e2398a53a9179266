package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AgreePageTest {
    private static final String AGREE = "/visits/1/agree";

    @TempDir
    Path folder;

    private OldViola shop;
    private OpenedDesk desk;
    private List<Treatment> lines = List.of();

    @BeforeEach
    void open() {
        shop = new OldViola(folder);
        desk = shop.open();
        lines = shop.proposeOneOfEachTier();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    /** A sound form with two lines ticked, and what is to be different in it. */
    private String[] form(String... different) {
        List<String> form = new ArrayList<>(List.of(different));
        add(form, "state", shop.proposal().state());
        add(form, "agreed_by", "Ilse Tamm");
        add(form, "means", "E_MAIL");
        add(form, "agreed_on", "2026-11-04");
        add(form, "promised_on", "2026-12-18");
        add(form, "ceiling", "900");
        add(form, "remark", "Please send a picture of the label.");
        add(form, "hand", "Ines");
        add(form, "do", "agree");
        form.addAll(List.of("line", Long.toString(lines.get(0).id())));
        form.addAll(List.of("line", Long.toString(lines.get(1).id())));
        return form.toArray(String[]::new);
    }

    private static void add(List<String> form, String name, String value) {
        if (!form.contains(name)) {
            form.addAll(List.of(name, value));
        }
    }

    @Test
    void aChosenScopeOpensWithItsLinesTickedAndItsSum() {
        OpenedDesk.Answer page = desk.get(AGREE + "?scope=SOUND");
        assertThat(page.page().select("input[name=line][checked]").eachAttr("value"))
                .containsExactly(
                        Long.toString(lines.get(0).id()),
                        Long.toString(lines.get(1).id()));
        Proposal proposal = shop.proposal();
        String price =
                proposal.words().range(proposal.offers().list().get(2).sum().price());
        assertThat(page.words("#sum .answer").replace('\u00a0', ' '))
                .isEqualTo(("Sound, " + price + ", with 19 % tax.").replace('\u00a0', ' '));
        assertThat(page.page().select("#f-agreed_by").val()).isEqualTo("Ilse Tamm");
        assertThat(page.page().select("#f-agreed_on").val()).isEqualTo("2026-11-04");
        assertThat(page.page().select("#f-hand").val()).isEqualTo("Ines");
    }

    @Test
    void theSumFollowsTheTicksWithAndWithoutScript() {
        String one = Long.toString(lines.get(2).id());
        String live = desk.post(AGREE + "/sum", "line", one).words();
        assertThat(live).startsWith("The owner’s own choice of lines, EUR");
        OpenedDesk.Answer whole = desk.post(AGREE, "line", one, "do", "reckon", "agreed_by", "half typed");
        assertThat(whole.status()).isEqualTo(200);
        assertThat(whole.words("#sum")).isEqualTo(live);
        assertThat(whole.page().select("#f-agreed_by").val()).isEqualTo("half typed");
        assertThat(desk.post(AGREE + "/sum").words()).isEqualTo("It stays as it is.");
        assertThat(shop.agreements.findNow(1)).isEmpty();
    }

    @Test
    void anAgreementIsKeptAndToldOnWorkbenchAndInstrument() {
        OpenedDesk.Answer page = desk.postAndFollow(AGREE, form());
        Agreement kept = shop.agreements.findNow(1).orElseThrow();
        assertThat(kept.scope()).isEqualTo(Scope.SOUND);
        assertThat(kept.means()).isEqualTo(Means.E_MAIL);
        assertThat(shop.visits.get(1).promisedOn()).isEqualTo(LocalDate.of(2026, 12, 18));
        String sentence = AgreementWords.agreed(kept, shop.proposal().words());
        assertThat(sentence).startsWith("Agreed on 4 November 2026 with Ilse Tamm, by e-mail: sound, EUR");
        assertThat(page.page().select("p.answer").get(0).wholeText()).isEqualTo(sentence);
        assertThat(page.words("details.agreed"))
                .contains(
                        "Not taken up: Retouch the loss with spirit colours",
                        "Not beyond EUR",
                        "900 without the owner’s word.")
                .endsWith(
                        "Promised for 18 December 2026. Please send a picture of the label. Written down 4 Nov 2026, 10:00"
                                + " by Ines; an hour at EUR 68.00 before tax.");
        assertThat(desk.get("/instruments/1").words(".stage p.answer")).isEqualTo(sentence.replace('\u00a0', ' '));
    }

    @Test
    void aLaterAgreementShowsTheOneItReplaces() {
        desk.post(AGREE, form());
        OpenedDesk.Answer again = desk.get(AGREE + "?scope=FULL");
        assertThat(again.words(".caveat"))
                .isEqualTo("This will replace the agreement of 4 November 2026; both stay to be read.");
        OpenedDesk.Answer page = desk.postAndFollow(AGREE, form("means", "TELEPHONE"));
        assertThat(page.lines("details.agreed summary")).hasSize(2).satisfies(told -> {
            assertThat(told.get(0)).startsWith("Agreed on 4 November 2026 with Ilse Tamm, by telephone:");
            assertThat(told.get(1)).startsWith("Replaced: Agreed on 4 November 2026 with Ilse Tamm, by e-mail:");
        });
    }

    @Test
    void whatChangedAfterTheAgreementIsSaid() {
        desk.post(AGREE, form());
        shop.propose("fill", shop.chip);
        assertThat(desk.get("/visits/1/agreement").words(".caveat"))
                .isEqualTo("This differs from what was agreed; a change needs the owner’s word again."
                        + " “Fill the loss and level it” was added afterwards and is not agreed.");
    }

    @Test
    void everyProblemIsListedAndWhatWasTypedIsKept() {
        OpenedDesk.Answer page = desk.post(
                AGREE,
                form(
                        "agreed_by",
                        "",
                        "means",
                        "",
                        "agreed_on",
                        "2026-11-05",
                        "promised_on",
                        "2026-11-01",
                        "ceiling",
                        "1",
                        "hand",
                        " "));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.lines(".problems li"))
                .containsExactly(
                        "The day of the agreement is 2026-11-05; allowed is from the receipt on 2026-10-26 to today,"
                                + " 2026-11-04.",
                        "The promised day 2026-11-01 lies before the day of the agreement, 2026-11-05; choose that day or a"
                                + " later one, or leave it empty.",
                        "How it was agreed is not chosen; choose one of: in person, letter, e mail, telephone.",
                        "Who agreed is empty. Write a few words.",
                        "The ceiling 1.00 lies below the low end of the price, 100.00; take lines out, raise it or leave it"
                                + " empty.",
                        "Who writes this down is empty. Write a few words.");
        assertThat(page.page().select("#f-promised_on").val()).isEqualTo("2026-11-01");
        assertThat(shop.agreements.findNow(1)).isEmpty();
    }

    @Test
    void aDayThatIsMissingIsAskedFor() {
        assertThat(desk.post(AGREE, form("agreed_on", "")).lines(".problems li"))
                .containsExactly("The day of the agreement is missing. Write year-month-day, such as 2026-11-04.");
    }

    @Test
    void aProposalThatChangedMeanwhileIsLookedAtAgain() {
        String[] filled = form();
        shop.treatments.putAway(lines.get(2).id(), true);
        OpenedDesk.Answer page = desk.post(AGREE, filled);
        assertThat(page.lines(".problems li"))
                .containsExactly(
                        "The proposal changed while this form was open; look at the lines and prices as they stand"
                                + " now, then agree again.");
        assertThat(page.page().select("input[name=state]").val())
                .isEqualTo(shop.proposal().state());
        assertThat(shop.agreements.findNow(1)).isEmpty();
    }
}
