package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Card;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.rendered.Jpeg;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;
import afterlength.workshop.desk.Desk;
import afterlength.workshop.examination.CardPrint;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.PhotographWords;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.ShopFolder;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** In a real browser: a crack of known length on a rendered photograph is marked by mouse and by keys and read within its ±. */
class MarkingBrowserTest {
    private static final Scene SCENE = Scene.of(Card.POCKET, 1600, Scene.Camera.over(Card.POCKET, 20, 70, 260));
    private static final Point FROM = Point.of(-12, 15);
    private static final Point TO = Point.of(-18, 78);
    private static final double CRACK_MM = FROM.distanceTo_mm(TO);
    private static final Pattern SAID = Pattern.compile("([0-9.]+) ± ([0-9.]+) mm");

    @TempDir
    Path folder;

    private Desk desk;
    private OpenBrowser browser;

    @BeforeEach
    void aShopWithOnePicture() {
        House house = House.of(ShopFolder.open(folder), Clock.system(ZoneId.systemDefault()));
        house.visits.receive(new Arrival(
                new Owner(0, "A person (invented)", "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.VIOLIN, "Violin", "", "", "none", "", 356.0, "", "", 1956, 1),
                new Visit(0, 0, "", LocalDate.of(2026, 3, 2), "", "A crack", "", "", "", null, null, 1)));
        house.intake.take(
                1, new PictureFile("crack.jpg", photograph()), new PhotographWords(Moment.BEFORE, "front", ""));
        house.cardPrints.add(new CardPrint(0, Card.POCKET, 1, 100, 100, Instant.parse("2026-03-02T09:15:00Z")));
        desk = house.openDesk(0);
        browser = new OpenBrowser();
    }

    @AfterEach
    void close() {
        browser.close();
        desk.close();
    }

    private static byte[] photograph() {
        BufferedImage picture = Renderer.render(SCENE, 3);
        Pixel from = SCENE.view().pixel(FROM, 0);
        Pixel to = SCENE.view().pixel(TO, 0);
        Graphics2D brush = picture.createGraphics();
        brush.setColor(Color.BLACK);
        brush.setStroke(new BasicStroke(2));
        brush.draw(new Line2D.Double(from.x(), from.y(), to.x(), to.y()));
        brush.dispose();
        return Jpeg.of(picture, 0.92);
    }

    private Page opened(Page page) {
        page.setViewportSize(1280, 1000);
        page.navigate(desk.address() + "photographs/1/marks");
        page.waitForSelector("#card:not([data-working])");
        page.locator("#f-arch-PLANE").check();
        return page;
    }

    /** What the page says of the mark, checked against the truth. */
    private static void assertTold(String words) {
        Matcher said = SAID.matcher(words);
        assertThat(said.find()).as(words).isTrue();
        double length_mm = Double.parseDouble(said.group(1));
        double plusMinus_mm = Double.parseDouble(said.group(2));
        assertThat(Math.abs(length_mm - CRACK_MM))
                .as(words + ", in truth " + CRACK_MM)
                .isLessThanOrEqualTo(plusMinus_mm);
        assertThat(plusMinus_mm).as("a ± that says something").isLessThan(1.5);
    }

    @Test
    void aCrackIsMarkedByMouseAndReadWithinItsPlusMinus() {
        Page page = opened(browser.page());
        click(page, SCENE.view().pixel(FROM, 0));
        click(page, SCENE.view().pixel(Point.of(-15, 46.5), 0));
        click(page, SCENE.view().pixel(TO, 0));
        page.waitForSelector("#reading:has-text('Three points set')");
        assertTold(page.locator("#reading .answer").innerText());
        page.keyboard().press("Control+z");
        page.waitForSelector("#reading:has-text('Two points set')");
        click(page, SCENE.view().pixel(TO, 0));
        page.waitForSelector("#reading:has-text('Three points set')");
        page.locator("#f-hand").fill("An invented hand");
        page.locator("#save-mark").click();
        page.waitForSelector("#mark-1");
        assertTold(page.locator("#mark-1 .seen").innerText());
    }

    @Test
    void aCrackIsMarkedByKeysAlone() {
        Page page = opened(browser.page());
        Keyboard keyboard = new Keyboard(page);
        keyboard.reach("document.activeElement.matches('[data-sheet]')", "the picture");
        moveTo(page, SCENE.view().pixel(FROM, 0));
        page.keyboard().press("Enter");
        moveTo(page, SCENE.view().pixel(Point.of(0, 0), 0));
        page.keyboard().press("Enter");
        page.keyboard().press("Backspace");
        moveTo(page, SCENE.view().pixel(TO, 0));
        page.keyboard().press("Enter");
        page.waitForSelector("#reading:has-text('Two points set')");
        assertTold(page.locator("#reading .answer").innerText());
        page.keyboard().press("Escape");
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("save-mark");
        page.keyboard().press("Enter");
        page.waitForSelector("#mark-1");
        assertTold(page.locator("#mark-1 .seen").innerText());
    }

    @Test
    void theMarkingPagesHaveNoSeriousFaultForAxe() {
        Page page = opened(browser.pageForChecker());
        assertThat(graveFaults(page)).isEmpty();
        page.navigate(desk.address() + "visits/1/drawings/front");
        assertThat(graveFaults(page)).isEmpty();
    }

    private static List<String> graveFaults(Page page) {
        return new AxeBuilder(page)
                .analyze().getViolations().stream()
                        .filter(rule -> PagesBrowserTest.GRAVE.contains(rule.getImpact()))
                        .map(Rule::getId)
                        .toList();
    }

    /** Where a pixel of the picture is seen on the screen. */
    private static void click(Page page, Pixel pixel) {
        page.locator("[data-sheet]").scrollIntoViewIfNeeded();
        BoundingBox box = page.locator("[data-sheet] img").boundingBox();
        double shown = box.width / SCENE.width_px();
        page.mouse().click(box.x + pixel.x() * shown, box.y + pixel.y() * shown);
    }

    /** Steps of ten and of one screen pixel, as the arrow keys go. */
    private static void moveTo(Page page, Pixel pixel) {
        double shown = page.locator("[data-sheet] img").boundingBox().width / SCENE.width_px();
        step(page, "Arrow", "Right", "Left", (pixel.x() - cross(page, "across")) * shown);
        step(page, "Arrow", "Down", "Up", (pixel.y() - cross(page, "down")) * shown);
    }

    /** The place that the page tells, after a step and back so that it tells one. */
    private static double cross(Page page, String axis) {
        page.keyboard().press("Shift+ArrowRight");
        page.keyboard().press("Shift+ArrowLeft");
        Matcher told = Pattern.compile("([0-9.]+) " + axis)
                .matcher(page.locator("[data-where]").innerText());
        assertThat(told.find()).isTrue();
        return Double.parseDouble(told.group(1));
    }

    private static void step(Page page, String key, String ahead, String back, double far_px) {
        String way = key + (far_px > 0 ? ahead : back);
        long whole = Math.round(Math.abs(far_px));
        for (long n = 0; n < whole / 10; n++) {
            page.keyboard().press(way);
        }
        for (long n = 0; n < whole % 10; n++) {
            page.keyboard().press("Shift+" + way);
        }
    }
}
