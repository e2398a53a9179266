package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.workshop.instrument.Owner;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.paper.PdfRuler;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sixty findings and an owner with a long name, on both papers: no row broken, every word there, every page counted. */
class LongReportPrintTest {
    private static final int FINDINGS = 60;
    private static final String LONG_NAME =
            "Maximiliana-Theodora von und zu der Weidenau-Hinterlangenbach, geborene Überzwerch";

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"false, 210, 297", "true, 215.9, 279.4"})
    void sixtyFindingsStandOnWholeRows(boolean letter, double width_mm, double height_mm) {
        ExaminedShop shop = new ExaminedShop(folder);
        Settings fresh = shop.settings.get();
        shop.settings.put(new Settings(
                fresh.shopName(), "", fresh.hands(), "EUR", fresh.perHour(), 0, letter, fresh.closesAt(), false));
        shop.owners.change(new Owner(1, LONG_NAME, "", "", "", "", 1));
        List<String> parts = List.of("top", "back", "ribs", "varnish", "scroll");
        for (int n = 1; n <= FINDINGS; n++) {
            shop.findings.add(
                    shop.finding(
                            parts.get(n % parts.size()),
                            "wear",
                            "row " + n + " begins. " + "It goes on for a while along the edge. ".repeat(n % 7)
                                    + "And row " + n + " ends."),
                    List.of());
        }
        try (PdfRuler paper = PdfRuler.of(shop.reports.pdf(shop.visit, shop.settings.get()))) {
            assertThat(paper.pages()).isGreaterThan(5);
            assertThat(paper.text().replaceAll("\\s+", " ")).contains("Owner " + LONG_NAME);
            assertThat(paper.fonts()).allMatch(PDFont::isEmbedded);
            for (int page = 1; page <= paper.pages(); page++) {
                assertThat(paper.width_mm(page)).isCloseTo(width_mm, within(0.05));
                assertThat(paper.height_mm(page)).isCloseTo(height_mm, within(0.05));
                assertThat(paper.text(page)).contains("page " + page + " of " + paper.pages());
                rowsAreWhole(paper.text(page).replaceAll("\\s+", " "));
            }
            String all = paper.text().replaceAll("\\s+", " ");
            for (int n = 1; n <= FINDINGS; n++) {
                assertThat(all).contains("row " + n + " begins.", "And row " + n + " ends.");
            }
        }
    }

    private static void rowsAreWhole(String page) {
        for (int n = 1; n <= FINDINGS; n++) {
            assertThat(page.contains("And row " + n + " ends."))
                    .as("row " + n + " begins and ends on one page")
                    .isEqualTo(page.contains("row " + n + " begins."));
        }
    }
}
