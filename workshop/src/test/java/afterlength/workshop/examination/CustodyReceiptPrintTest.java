package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.paper.PdfRuler;
import java.nio.file.Path;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CustodyReceiptPrintTest {
    @TempDir
    Path folder;

    private ExaminedShop shop;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(folder);
    }

    private PdfRuler receipt() {
        return PdfRuler.of(shop.receipts.pdf(shop.visits.get(shop.visit.id()), shop.settings.get()));
    }

    private static String oneLine(PdfRuler paper) {
        return paper.text().replaceAll("[\\s\u00a0\u202f]+", " ");
    }

    private void tell(String broughtBy, String accessories, String state, @Nullable Money value) {
        Visit it = shop.visits.get(shop.visit.id());
        shop.visits.change(new Visit(
                it.id(),
                it.instrumentId(),
                it.number(),
                it.receivedOn(),
                broughtBy,
                it.reason(),
                it.wish(),
                accessories,
                state,
                value,
                it.promisedOn(),
                it.version()));
    }

    @Test
    void itNamesOwnerInstrumentAccessoriesValueStateAndBothSignatures() {
        shop.owners.change(new Owner(1, "Ida Beispiel", "", "", "Weir 7\nRivertown", "", 1));
        tell("Ben Muster", "case, bow without hair; two strings.", "Strings slack, seam open.", new Money(420_000));
        try (PdfRuler paper = receipt()) {
            assertThat(oneLine(paper))
                    .contains("Received 2 March 2026 from Ben Muster, to be kept, looked at and given back.")
                    .contains("Receipt number 2026-001", "Owner Ida Beispiel Weir 7 Rivertown")
                    .contains("Brought by Ben Muster, who says to act for the owner")
                    .contains("☐ case ☐ bow without hair ☐ two strings")
                    .contains("Insured value, as the owner states it EUR 4 200.00")
                    .contains("Strings slack, seam open.", "left by: Ben Muster, place and date")
                    .contains("received for the workshop, place and date");
            assertThat(paper.fonts()).isNotEmpty().allMatch(PDFont::isEmbedded);
            assertThat(paper.document().getDocumentCatalog().getLanguage()).isEqualTo("en");
            assertThat(paper.document().getDocumentInformation().getTitle())
                    .isEqualTo("Receipt · Viola, about 1905, visit 2026-001");
        }
    }

    @Test
    void whatWasNotToldIsSaidAndNotLeftOut() {
        tell("", "", "", null);
        try (PdfRuler paper = receipt()) {
            assertThat(oneLine(paper))
                    .contains("nothing was written down", "as the owner states it not stated")
                    .contains("Nothing was written down at the desk.", "No picture was taken at receipt.")
                    .contains("to be told when the work is agreed");
        }
    }

    @Test
    void picturesBeforeWorkStandOnItWithTheirFingerprint() {
        Photograph front = shop.take(TestPictures.jpeg(400, 600), Moment.BEFORE, "front");
        shop.take(TestPictures.jpeg(400, 610), Moment.AFTER, "after all");
        try (PdfRuler paper = receipt()) {
            assertThat(oneLine(paper))
                    .contains("front, before work file " + front.sha256().substring(0, 16))
                    .doesNotContain("after all");
        }
    }

    @Test
    void theDeskHandsItOut() {
        try (OpenedDesk desk = OpenedDesk.with(shop.rooms())) {
            assertThat(desk.get("/visits/1/receipt.pdf").status()).isEqualTo(200);
            assertThat(desk.get("/instruments/1").page().select("a[href=/visits/1/receipt.pdf]"))
                    .hasSize(1);
        }
    }
}
