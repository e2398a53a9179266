package afterlength.workshop.invoice;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.OpenedDesk;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InvoicePageTest {
    @TempDir
    Path folder;

    private BilledShop shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new BilledShop(folder);
        desk = shop.open();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private String[] form(String... changes) {
        String seam = "t" + shop.seam.id();
        Map<String, String> form = new TreeMap<>(Map.of(
                "line",
                seam,
                "title_" + seam,
                "Seam closed",
                "net_" + seam,
                "50,00",
                "tax_" + seam,
                "19",
                "buyer",
                "Ilse Tamm",
                "supplied_on",
                "2026-11-04",
                "hand",
                "Ines",
                "do",
                "issue"));
        for (int n = 0; n < changes.length; n += 2) {
            form.put(changes[n], changes[n + 1]);
        }
        List<String> pairs = new ArrayList<>();
        form.forEach((name, value) -> pairs.addAll(List.of(name, value)));
        return pairs.toArray(String[]::new);
    }

    private OpenedDesk.Answer post(String... changes) {
        return desk.postAndFollow("/visits/1/invoice", form(changes));
    }

    @Test
    void theFormComesFilledFromAgreementAndDiary() {
        shop.agree(null, shop.seam, shop.retouch);
        shop.work(shop.seam, 50);
        OpenedDesk.Answer page = desk.get("/visits/1/invoice");
        assertThat(page.words(".answer")).contains("Agreed on 4 November 2026: up to EUR", "an hour at EUR 60.00");
        assertThat(page.words()).contains("The diary counts 50 min, with materials EUR 50.00.");
        assertThat(page.page().select("#f-net_t" + shop.seam.id()).val()).isEqualTo("50.00");
        assertThat(page.page().select("input[name=line][checked]").eachAttr("value"))
                .containsExactly("t" + shop.seam.id());
        assertThat(page.words("#sum")).startsWith("EUR 59.50 in all: EUR 50.00 before tax, EUR 9.50 tax.");
    }

    @Test
    void aBillIsIssuedShownAndPrinted() {
        shop.agree(null, shop.seam);
        OpenedDesk.Answer page = post();
        assertThat(page.words("h1")).isEqualTo("Invoice 2026-0001");
        assertThat(page.words(".answer"))
                .isEqualTo("EUR 59.50 in all: EUR 50.00 before tax, EUR 9.50 tax. To pay: EUR 59.50.");
        assertThat(desk.get("/invoices/1/paper.pdf").status()).isEqualTo(200);
        assertThat(desk.get("/instruments/1").words()).contains("Invoice 2026-0001, 4 November 2026");
    }

    @Test
    void aBillBeyondTheCeilingIsRefusedAndEverythingTypedIsKept() {
        shop.agree(new Money(20_000), shop.seam);
        OpenedDesk.Answer page = post("net_t" + shop.seam.id(), "180");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words("#problem-line"))
                .isEqualTo("With tax this comes to 214.20; the owner agreed to no more than"
                        + " 200.00. Lower or untick a line, or agree anew with the owner first.");
        assertThat(page.page().select("#f-net_t" + shop.seam.id()).val()).isEqualTo("180");
        assertThat(shop.invoices.list()).isEmpty();
    }

    @Test
    void twoBillsTogetherCannotPassTheCeilingEither() {
        shop.agree(new Money(20_000), shop.seam);
        post("net_t" + shop.seam.id(), "100");
        OpenedDesk.Answer second = post("net_t" + shop.seam.id(), "100");
        assertThat(second.words("#problem-line"))
                .startsWith("With tax and what was billed before this comes to 238.00;");
    }

    @Test
    void aboveTheAgreedRangeTheOwnersWordHasToBeWritten() {
        shop.agree(null, shop.seam);
        long high = shop.agreements
                .findNow(shop.visit.id())
                .orElseThrow()
                .highMinor()
                .minor();
        String beyond = Long.toString(high / 100 + 1);
        OpenedDesk.Answer refused = post("net_t" + shop.seam.id(), beyond);
        assertThat(refused.words("#problem-remark"))
                .contains("above the agreed range up to", "when and how the owner agreed");
        assertThat(post("net_t" + shop.seam.id(), beyond, "remark", "Agreed by telephone on 3 November.")
                        .words("h1"))
                .isEqualTo("Invoice 2026-0001");
    }

    @Test
    void allProblemsStandBesideTheirFields() {
        shop.agree(null, shop.seam);
        OpenedDesk.Answer page = post(
                "net_t" + shop.seam.id(),
                "much",
                "tax_t" + shop.seam.id(),
                "5.55",
                "supplied_on",
                "2027-01-01",
                "hand",
                "");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words("#problem-net_t" + shop.seam.id()))
                .isEqualTo(
                        "The amount is “much”; allowed is an amount with at most two decimals, such as 1200 or 1200,50.");
        assertThat(page.words("#problem-tax_t" + shop.seam.id()))
                .isEqualTo("The tax is 5.55 %; at most one decimal is kept, such as 5.5.");
        assertThat(page.words("#problem-supplied_on"))
                .isEqualTo("The day of the work is 2027-01-01; allowed is from the receipt on 2026-10-26 to today,"
                        + " 2026-11-04.");
    }

    @Test
    void aBillIsTakenBackOnItsPage() {
        shop.agree(null, shop.seam);
        post();
        assertThat(desk.post("/invoices/1/credit", "reason", "", "hand", "Ines").status())
                .isEqualTo(422);
        OpenedDesk.Answer note =
                desk.postAndFollow("/invoices/1/credit", "reason", "The name was wrong.", "hand", "Ines");
        assertThat(note.words("h1")).isEqualTo("Credit note 2026-0002");
        assertThat(note.words(".answer")).startsWith("EUR −59.50 in all");
        assertThat(note.words()).contains("It takes back Invoice 2026-0001 of 4 November 2026 as a whole.");
        assertThat(desk.get("/invoices/1").words())
                .contains("It was taken back as a whole by Credit note 2026-0002")
                .doesNotContain("Take the whole bill back");
    }

    @Test
    void aRefusalOnABillTakenBackMeanwhileIsSaidAndLosesNoWords() {
        shop.agree(null, shop.seam);
        post();
        desk.post("/invoices/1/credit", "reason", "The name was wrong.", "hand", "Ines");
        OpenedDesk.Answer late = desk.post("/invoices/1/credit", "reason", "The day was wrong.", "hand", "");
        assertThat(late.status()).isEqualTo(422);
        assertThat(late.words()).contains("Who takes it back is empty", "The day was wrong.");
    }

    @Test
    void theRoundingRuleIsASettingAndIsStated() {
        desk.post("/shelf/invoices", "rounding", "PER_LINE", "tax_id", "TN 1", "terms", "", "no_tax_reason", "");
        assertThat(shop.rules.get().rounding()).isEqualTo(Rounding.PER_LINE);
        assertThat(desk.get("/visits/1/invoice").words())
                .contains("Tax is reckoned on each line, rounded half up to 0.01, and added up.");
        assertThat(desk.post("/shelf/invoices", "rounding", "SOMEHOW").words("#problem-rounding, .problem"))
                .contains("How tax is rounded is “SOMEHOW”; choose one of: per line, per total.");
    }

    @Test
    void withoutAnAgreementOnlyOwnLinesCanBeBilled() {
        OpenedDesk.Answer page = post("line", "", "title_own1", "Set of strings", "net_own1", "84", "tax_own1", "19");
        assertThat(page.words(".answer")).startsWith("EUR 99.96 in all");
    }
}
