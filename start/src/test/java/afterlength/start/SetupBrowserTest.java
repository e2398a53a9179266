package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.Board;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.StringSpacing;
import afterlength.craft.setup.Waist;
import afterlength.workshop.desk.Desk;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.setup.Setup;
import afterlength.workshop.setup.SetupMoment;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.LoadState;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** In a real browser: a clearance is dragged, and stepped with the arrow keys, and drawing, sentence, map and field follow. */
class SetupBrowserTest {
    private static final String BASS = "#handle-clearance-bass";

    @TempDir
    Path folder;

    @Test
    void aClearanceIsDraggedAndEverythingFollows() {
        House house = House.of(ShopFolder.open(folder), Clock.system(ZoneId.systemDefault()));
        keepASetUp(house);
        try (Desk desk = house.openDesk(0);
                OpenBrowser browser = new OpenBrowser()) {
            Page page = browser.page();
            page.setViewportSize(1280, 1000);
            page.navigate(desk.address() + "visits/1/setup?moment=AFTER");
            Seen first = Seen.on(page);
            drag(page, -40);
            Seen dragged = waitForChange(page, first);
            assertThat(dragged.clearance()).isGreaterThan(first.clearance());
            assertThat(dragged.allDifferFrom(first)).isTrue();
            page.locator(BASS).focus();
            page.keyboard().press("ArrowDown");
            Seen stepped = waitForChange(page, dragged);
            assertThat(stepped.clearance() - dragged.clearance()).isCloseTo(-0.1, within(1e-6));
            assertThat(stepped.allDifferFrom(dragged)).isTrue();
            page.keyboard().press("ArrowDown");
            Seen again = waitForChange(page, stepped);
            assertThat(again.clearance() - stepped.clearance()).isCloseTo(-0.1, within(1e-6));
        }
    }

    @Test
    void theWorkbenchHasNoSeriousFaultForAxe() {
        House house = House.of(ShopFolder.open(folder), Clock.system(ZoneId.systemDefault()));
        keepASetUp(house);
        try (Desk desk = house.openDesk(0);
                OpenBrowser browser = new OpenBrowser()) {
            Page page = browser.pageForChecker();
            page.navigate(desk.address() + "visits/1/setup?moment=AFTER");
            List<String> grave = new AxeBuilder(page)
                    .analyze().getViolations().stream()
                            .filter(rule -> PagesBrowserTest.GRAVE.contains(rule.getImpact()))
                            .map(Rule::getId)
                            .toList();
            assertThat(grave).isEmpty();
        }
    }

    /** What the page says at one moment. */
    private record Seen(double clearance, String sentence, String drawing, String map) {
        static Seen on(Page page) {
            return new Seen(
                    Double.parseDouble(page.inputValue("[name='board_end_clearance_mm/bass']")),
                    page.locator("#live-answer").innerText(),
                    page.locator("#live-front .drawn svg.drawing").innerHTML(),
                    page.locator("#live-map table").innerText());
        }

        boolean allDifferFrom(Seen other) {
            return !sentence.equals(other.sentence) && !drawing.equals(other.drawing) && !map.equals(other.map);
        }
    }

    private static void drag(Page page, double down_px) {
        Locator handle = page.locator(BASS + " .ring");
        BoundingBox box = handle.boundingBox();
        double x = box.x + box.width / 2;
        double y = box.y + box.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        for (int i = 1; i <= 10; i++) {
            page.mouse().move(x, y + down_px * i / 10);
        }
        page.mouse().up();
    }

    /** The page is still when it has answered for the value in the field. */
    private static Seen waitForChange(Page page, Seen before) {
        page.waitForFunction(
                "before => { const field = document.querySelector(\"[name='board_end_clearance_mm/bass']\").value;"
                        + " const said = document.querySelector('#live-answer').innerText;"
                        + " return said !== before && said.includes('G stands ' + Number(field).toFixed(1)); }",
                before.sentence());
        page.waitForLoadState(LoadState.NETWORKIDLE);
        return Seen.on(page);
    }

    private static void keepASetUp(House house) {
        house.visits.receive(new Arrival(
                new Owner(0, "A person (invented)", "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.VIOLIN, "Violin", "", "", "none", "", 356.0, "", "", 1956, 1),
                new Visit(0, 0, "", LocalDate.of(2026, 3, 2), "", "New bridge", "", "", "", null, null, 1)));
        BridgeInputs inputs = new BridgeInputs(
                328,
                Board.ofOneRadius(270, 42).withScoop(new BassTreble(0.8, 0.4)),
                new StringSpacing.ByCentres(16.5),
                new StringSpacing.ByCentres(33.5),
                new BassTreble(0.45, 0.30),
                new BassTreble(5.5, 3.5),
                ClearanceConvention.SQUARE,
                27,
                BridgeInputs.USUAL_GROOVE_FRACTION,
                new RadiusCrown(42),
                List.of(
                        FittedString.ofTension("G", 0.8, 44),
                        FittedString.ofTension("D", 0.72, 45),
                        FittedString.ofTension("A", 0.66, 55),
                        FittedString.ofTension("E", 0.26, 75)),
                new Waist(112, 11.5));
        house.setups.save(new Setup(0, 1, SetupMoment.AFTER, inputs, Instant.parse("2026-03-02T09:15:00Z"), "h"));
    }
}
