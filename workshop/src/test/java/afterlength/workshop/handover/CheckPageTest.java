package afterlength.workshop.handover;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.instrument.Visit;
import java.io.InputStream;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same measures a year later, beside those of the handover. */
class CheckPageTest {
    @TempDir
    Path root;

    private HandedOver shop;
    private Visit again;
    private long projection;

    @BeforeEach
    void open() throws Exception {
        shop = new HandedOver(root);
        again = shop.comesAgain();
        projection = shop.measures.listNow(shop.shop.viola.id()).stream()
                .filter(measure -> measure.moment() == Moment.AFTER)
                .findFirst()
                .orElseThrow()
                .id();
    }

    @AfterEach
    void close() {
        shop.desk.close();
    }

    private String page() {
        return "/visits/" + again.id() + "/check";
    }

    @Test
    void everyMeasureOfTheHandoverIsAskedAgain() {
        OpenedDesk.Answer page = shop.desk.get(page());
        assertThat(page.words(".answer")).isEqualTo("0 of 2 measures of the handover on 1 April 2026 are taken again.");
        assertThat(page.lines("legend"))
                .containsExactly(
                        "body length: 405.5 ± 0.1 mm at handover (tape)",
                        "projection: 32.0 ± 0.2 mm at handover (straight-edge)");
    }

    @Test
    void whatIsMeasuredStandsBesideItWithTheDifferenceAndTheAir() {
        OpenedDesk.Answer page = shop.desk.postAndFollow(
                page(),
                "value_" + projection,
                "30,5",
                "plus_minus_" + projection,
                "0.2",
                "humidity_pct",
                "31",
                "temperature_c",
                "",
                "hand",
                "Ida");
        assertThat(page.lines("tbody tr"))
                .containsExactly("projection 32.0 ± 0.2 mm 30.5 ± 0.2 mm 1.5 ± 0.3 mm less"
                        + " Measured in air 14 points drier than then; part of the difference may be the wood's.");
        assertThat(page.words(".answer")).startsWith("1 of 2 measures");
        assertThat(shop.measures.listNow(again.id())).singleElement().satisfies(measure -> {
            assertThat(measure.method()).isEqualTo("straight-edge");
            assertThat(measure.value()).isEqualTo(30.5);
        });
    }

    @Test
    void aSlipIsRefusedAndEverythingTypedIsKept() {
        OpenedDesk.Answer page =
                shop.desk.post(page(), "value_" + projection, "3050", "plus_minus_" + projection, "", "hand", "Ida");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words(".problems"))
                .contains("The value of projection is 3050; allowed is 3 to 250 mm.")
                .contains("The ± of projection is “”, which is not a number.");
        assertThat(page.page().select("#f-value_" + projection).attr("value")).isEqualTo("3050");
        assertThat(shop.measures.listNow(again.id())).isEmpty();
    }

    @Test
    void thePaperHasPlaceToWriteOrTheFigures() throws Exception {
        assertThat(pdf()).contains("To be measured again.", "32.0 ± 0.2 mm", "………", "a worn edge");
        shop.measures.add(HandedOver.measure(again, Moment.BEFORE, "PROJECTION", 31.9, 0.2, 45));
        assertThat(pdf()).contains("1 of 2 measured again.", "31.9 ± 0.2 mm", "none that ± 0.3 mm can show");
    }

    private String pdf() throws Exception {
        HttpResponse<InputStream> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(shop.desk.at(page() + ".pdf")).build(),
                        HttpResponse.BodyHandlers.ofInputStream());
        try (var document = Loader.loadPDF(answer.body().readAllBytes())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void withoutAnEarlierHandoverThereIsNothingToCheckAgainst() {
        assertThat(shop.desk.get("/visits/" + shop.shop.cello.id() + "/check").status())
                .isEqualTo(404);
    }
}
