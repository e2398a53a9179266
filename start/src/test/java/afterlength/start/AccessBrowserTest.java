package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Card;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;
import afterlength.workshop.desk.Desk;
import afterlength.workshop.examination.Answer;
import afterlength.workshop.examination.CardPrint;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingAge;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.PhotographWords;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.ShopFolder;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * In a real browser: a hole and a crack of known millimetres are traced on a rendered photograph, taken over into the study of access,
 * and drawn with the cleats over the photograph as if from straight above.
 */
class AccessBrowserTest {
    private static final Scene SCENE = Scene.of(Card.POCKET, 1600, Scene.Camera.over(Card.POCKET, 20, 70, 260));
    private static final List<Point> HOLE =
            List.of(Point.of(-40, 8), Point.of(-28, 8), Point.of(-28, 62), Point.of(-40, 62));
    private static final List<Point> CRACK = List.of(Point.of(-14, 12), Point.of(-14, 62));
    private static final Point POST = Point.of(-14, 37);

    @TempDir
    Path folder;

    private Desk desk;
    private OpenBrowser browser;

    @BeforeEach
    void aShopWithOneCrack() {
        House house = House.of(ShopFolder.open(folder), Clock.system(ZoneId.systemDefault()));
        house.visits.receive(new Arrival(
                new Owner(0, "A person (invented)", "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.VIOLIN, "Violin", "", "", "none", "", 356.0, "", "", 1956, 1),
                new Visit(0, 0, "", LocalDate.of(2026, 3, 2), "", "A crack", "", "", "", null, null, 1)));
        house.findings.add(crack(), List.of());
        house.intake.take(
                1,
                new PictureFile("crack.jpg", Renderer.jpeg(SCENE, 3)),
                new PhotographWords(Moment.BEFORE, "front", ""));
        house.cardPrints.add(new CardPrint(0, Card.POCKET, 1, 100, 100, Instant.parse("2026-03-02T09:15:00Z")));
        desk = house.openDesk(0);
        browser = new OpenBrowser();
    }

    private static Finding crack() {
        Instant seen = Instant.parse("2026-03-02T09:15:00Z");
        return new Finding(
                0,
                1,
                null,
                false,
                "top",
                "wing crack",
                "treble side",
                50.0,
                2.0,
                "",
                FindingAge.OLD,
                Answer.YES,
                Answer.NO,
                "",
                "",
                seen,
                "An invented hand",
                seen);
    }

    @AfterEach
    void close() {
        browser.close();
        desk.close();
    }

    private void trace(Page page, String tool, List<Point> places) {
        page.navigate(desk.address() + "photographs/1/marks?tool=" + tool + "&arch=PLANE");
        page.waitForSelector("#card:not([data-working])");
        page.locator("[data-points] summary").click();
        page.locator("#f-points")
                .fill(places.stream().map(AccessBrowserTest::pixel).collect(Collectors.joining("\n")));
        page.locator("#f-hand").fill("An invented hand");
        page.locator("#save-mark").click();
        page.waitForLoadState();
    }

    private static String pixel(Point place) {
        Pixel pixel = SCENE.view().pixel(place, 0);
        return pixel.x() + " " + pixel.y();
    }

    @Test
    void whatWasTracedIsTakenOverAndDrawnOverThePhotograph() {
        Page page = browser.page();
        page.setViewportSize(1280, 1000);
        trace(page, "OUTLINE", HOLE);
        trace(page, "CRACK", CRACK);
        trace(page, "POINT", List.of(POST));
        page.navigate(desk.address() + "visits/1/access/1");
        page.locator("#f-outline_mark").selectOption("1");
        page.locator("#f-crack_mark").selectOption("2");
        page.locator("#f-post_mark").selectOption("3");
        page.locator("#f-hand").fill("An invented hand");
        page.locator("button[value=take]").click();
        page.waitForSelector(".onphoto");
        page.waitForSelector("#way:not([data-working])");
        assertThat(page.locator("#way p[role=status]").innerText()).startsWith("A way in to the first cleat's place");
        assertNear(page.locator(".onphoto > svg > polygon").first().getAttribute("points"), HOLE);
        assertNear(page.locator(".onphoto .crack").getAttribute("points"), CRACK);
        assertThat(page.locator(".onphoto .cleat").count()).isPositive();
        assertThat(page.locator(".onphoto .keep").count()).isEqualTo(1);
        assertThat((Integer) page.evaluate("""
                async () => {
                  const answer = await fetch(document.querySelector('.onphoto image').getAttribute('href'));
                  const picture = await createImageBitmap(await answer.blob());
                  return picture.width;
                }""")).isGreaterThan(500);
    }

    /** The ± of a place is some tenths of a millimetre here. */
    private static void assertNear(String points, List<Point> truth) {
        List<String> drawn = Arrays.asList(points.split(" ", -1));
        assertThat(drawn).hasSameSizeAs(truth);
        for (int i = 0; i < truth.size(); i++) {
            String[] place = drawn.get(i).split(",", -1);
            assertThat(Double.parseDouble(place[0]))
                    .as(points)
                    .isCloseTo(truth.get(i).x_mm(), within(0.5));
            assertThat(Double.parseDouble(place[1]))
                    .as(points)
                    .isCloseTo(truth.get(i).y_mm(), within(0.5));
        }
    }
}
