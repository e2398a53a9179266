package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.paper.PdfRuler;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProposalPrintTest {
    @TempDir
    Path folder;

    private OldViola shop;

    @BeforeEach
    void open() {
        shop = new OldViola(folder);
    }

    /** All words of the paper in one line, hard and thin spaces as plain ones. */
    private String words() throws IOException {
        try (PdfRuler ruler = PdfRuler.of(ProposalPaper.pdf(shop.proposal(), OldViola.TODAY))) {
            return new PDFTextStripper().getText(ruler.document()).replaceAll("[\\s\u00a0\u202f]+", " ");
        }
    }

    @Test
    void thePaperHoldsEverythingAnOwnerChoosesBy() throws IOException {
        shop.proposeOneOfEachTier();
        assertThat(words())
                .contains("Proposal", "Viola, about 1905, visit 2026-001", "4 November 2026", "For Ilse Tamm.")
                .contains("Open seam (top), lower bout, 84.0 ± 2.0 mm")
                .contains("Leave as it is Playing order Sound Full restoration")
                .contains(
                        "What is done, and why By hand, price If nothing is done Taking it back",
                        "The gap grows with dry weather, dirt gets in, and the plate may crack where the seam"
                                + " still holds.")
                .contains("Reversible with water and warmth: the joint is hot hide glue and can be opened again.")
                .contains(
                        "Retouch the loss with spirit colours: Comes off with spirit while the isolating coat below holds;"
                                + " on soft old varnish not without loss.")
                .contains("rounded half up to 0.01", "19 % tax is reckoned once")
                .contains(
                        "If more turns out to be needed than is written here, work stops there and you are asked first.")
                .contains("the owner, place and date", "for the workshop, place and date");
    }

    @Test
    void onceAgreedThePaperShowsWhatWasAgreed() throws IOException {
        List<Treatment> lines = shop.proposeOneOfEachTier();
        Agreement kept = shop.agree(lines.get(0));
        String sentence = AgreementWords.agreed(kept, shop.proposal().words()).replaceAll("[\u00a0\u202f]", " ");
        assertThat(words())
                .contains(sentence)
                .contains(
                        "Not taken up: Support the crack from inside, through the sound-hole; Retouch the loss with spirit"
                                + " colours.")
                .doesNotContain("I choose:");
    }

    @Test
    void anEmptyProposalIsAPaperToo() throws IOException {
        assertThat(words())
                .contains("Nothing is proposed yet.", "stays as it is")
                .doesNotContain("Line by line");
    }

    @Test
    void theSheetIsTheOneTheShopPrintsOn() {
        shop.settings.put(new Settings(
                "s", "", List.of("Ines"), "USD", new Money(9000), 0, true, java.time.LocalTime.of(17, 30), false));
        shop.propose("seam");
        try (PdfRuler ruler = PdfRuler.of(ProposalPaper.pdf(shop.proposal(), OldViola.TODAY))) {
            assertThat(ruler.width_mm(1)).isCloseTo(215.9, within(0.05)); // a twentieth of a millimetre of PDF rounding
            assertThat(ruler.height_mm(1)).isCloseTo(279.4, within(0.05));
        }
    }

    @Test
    void theDeskHandsItOutAsAPdfWithTheVisitsNumber() {
        shop.propose("seam");
        try (OpenedDesk desk = shop.open()) {
            assertThat(desk.get("/visits/1/proposal.pdf").status()).isEqualTo(200);
        }
    }
}
