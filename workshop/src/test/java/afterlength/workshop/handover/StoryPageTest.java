package afterlength.workshop.handover;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.Base64;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The story that an owner may pass on, and the calendar. */
class StoryPageTest {
    @TempDir
    Path root;

    private HandedOver shop;
    private String story;

    @BeforeEach
    void open() throws Exception {
        shop = new HandedOver(root);
        story = "/visits/" + shop.shop.viola.id() + "/story";
    }

    @AfterEach
    void close() {
        shop.desk.close();
    }

    private OpenedDesk.Answer made(String... form) {
        return shop.desk.post(story + ".html", form);
    }

    @Test
    void thePageOffersPicturesAndWords() {
        OpenedDesk.Answer page = shop.desk.get(story);
        assertThat(page.page().select("input[name=picture][checked]")).hasSize(1);
        assertThat(page.words("textarea[name=words]"))
                .contains("Clementine Vantongeren", "clementine.vantongeren@example.org");
    }

    @Test
    void itTellsTheDaysWithoutPeopleAndNeedsNothingElse() throws Exception {
        OpenedDesk.Answer file = made("picture", "1", "words", "Clementine Vantongeren\nClementine");
        assertThat(file.lines("h2")).contains("What was seen", "5 March 2026", "2 March 2026", "Care");
        assertThat(file.words())
                .contains("… held the lamp.", "as … likes.")
                .doesNotContain("Clementine", "Muster", "Larkrise");
        assertThat(file.page().html()).doesNotContain("http:", "https:", "<script", "<link");
        String source = file.page().select("img").attr("src");
        assertThat(source).startsWith("data:image/jpeg;base64,");
        byte[] jpeg = Base64.getDecoder().decode(source.substring(source.indexOf(',') + 1));
        assertThat(ImageIO.read(new ByteArrayInputStream(jpeg)).getWidth()).isEqualTo(80);
    }

    @Test
    void onlyChosenPicturesAreInIt() {
        assertThat(made("words", "").page().select("img")).isEmpty();
        assertThat(made("picture", "2", "words", "").page().select("img"))
                .as("of another visit")
                .isEmpty();
    }

    @Test
    void theCalendarOfAVisitHoldsTheCheckAndNoName() {
        String file = shop.desk
                .get("/visits/" + shop.shop.viola.id() + "/dates.ics")
                .page()
                .text();
        assertThat(file)
                .contains("DTSTART;VALUE=DATE:20270401", "SUMMARY:Viola: check")
                .doesNotContain("promised", "Clementine");
    }

    @Test
    void theCalendarOfTheShopHoldsWhatIsPromisedAndWhatIsToBeChecked() {
        shop.comesAgain();
        String file = shop.desk.get("/calendar.ics").page().text();
        assertThat(file)
                .contains("SUMMARY:Cello: promised", "DTSTART;VALUE=DATE:20260401")
                .contains("SUMMARY:Viola: promised", "DTSTART;VALUE=DATE:20270409")
                .contains("SUMMARY:Viola: check", "UID:visit-2026-001-check@afterlength");
    }
}
