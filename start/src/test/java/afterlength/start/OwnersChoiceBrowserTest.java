package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Money;
import afterlength.workshop.agreement.Agreement;
import afterlength.workshop.agreement.AgreementLine;
import afterlength.workshop.agreement.Scope;
import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.agreement.TreatmentTemplates;
import afterlength.workshop.desk.Desk;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.ShopFolder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The owner chooses at the bench, on a tablet held upright (820 × 1180), with a finger, line by line; a change is a new entry. */
class OwnersChoiceBrowserTest {
    /** What a finger needs; see the screens contract of the house: touch targets of 44 px. */
    private static final double FINGER_PX = 44;

    @TempDir
    Path folder;

    private House house;
    private List<Treatment> lines;

    @BeforeEach
    void openShop() {
        house = House.of(ShopFolder.open(folder), Clock.system(ZoneId.systemDefault()));
        house.settings.put(new Settings(
                "Workshop (invented)",
                "",
                List.of("An invented hand"),
                "EUR",
                new Money(6000),
                190,
                false,
                LocalTime.of(18, 0),
                false));
        Visit visit = house.visits.receive(new Arrival(
                new Owner(0, "A person (invented)", "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.VIOLA, "Viola", "", "", "", "", null, "", "", null, 1),
                new Visit(0, 0, "", LocalDate.now(house.clock), "", "It buzzes.", "", "", "", null, null, 1)));
        lines = Stream.of("seam", "studs-through-sound-hole", "retouch-spirit")
                .map(key -> house.treatments.add(Treatment.from(TreatmentTemplates.get(key), visit.id()), List.of()))
                .toList();
    }

    @Test
    void theOwnerChoosesLineByLineWithAFingerAndALaterChangeIsANewEntry() {
        try (Desk desk = house.openDesk(0);
                OpenBrowser browser = new OpenBrowser()) {
            Page page = browser.tabletPage();
            page.navigate(desk.address() + "visits/1/agreement");
            assertThat(overflow_px(page)).as("nothing is cut off at the side").isZero();
            everyWayStandsSideBySide(page);
            page.locator("a[href='/visits/1/agree?scope=FULL']").tap();
            page.waitForURL("**/agree?scope=FULL");
            assertThat(overflow_px(page)).isZero();
            String whole = page.locator("#sum").innerText();
            line(page, 2).tap();
            page.waitForCondition(() -> !page.locator("#sum").innerText().equals(whole));
            everyLineTellsWhatHappensIfNothingIsDone(page);
            keep(page, "In the workshop");
            assertThat(accepted())
                    .containsExactly("Glue the open seam", "Support the crack from inside, through the sound-hole");

            page.navigate(desk.address() + "visits/1/agree?scope=PLAYING_ORDER");
            assertThat(page.locator(".caveat").innerText()).contains("both stay to be read");
            keep(page, "Less, after all");
        }
        List<Agreement> kept = house.agreements.listOf(1);
        assertThat(kept).hasSize(2);
        assertThat(kept.get(0).replaces()).isEqualTo(kept.get(1).id());
        assertThat(kept.get(1).scope()).isEqualTo(Scope.SOUND);
        assertThat(accepted()).containsExactly("Glue the open seam");
    }

    private static void everyWayStandsSideBySide(Page page) {
        List<String> ways = page.locator(".scope h3").allInnerTexts();
        assertThat(ways).containsExactly("Leave as it is", "Playing order", "Sound", "Full restoration");
        BoundingBox first = page.locator(".scope").nth(0).boundingBox();
        BoundingBox second = page.locator(".scope").nth(1).boundingBox();
        assertThat(second.y).as("the second way stands beside the first").isEqualTo(first.y);
        assertThat(second.x).isGreaterThan(first.x);
        assertThat(page.locator(".scope").nth(2).innerText())
                .contains("EUR", "by hand", "Can it be undone?")
                .containsPattern("Ready: \\d+ \\w+ 20\\d\\d");
        assertThat(page.locator("ol.proposal .ifleft").count()).isEqualTo(3);
    }

    private static void everyLineTellsWhatHappensIfNothingIsDone(Page page) {
        assertThat(page.locator(".templateoption .ifleft").allInnerTexts())
                .hasSize(3)
                .allMatch(words -> words.startsWith("If nothing is done:") && words.length() > 40);
        for (Locator option : page.locator(".templateoption").all()) {
            assertThat(option.boundingBox().height).isGreaterThanOrEqualTo(FINGER_PX);
        }
        assertThat(page.locator("button[value=agree]").boundingBox().height).isGreaterThanOrEqualTo(FINGER_PX);
    }

    private Locator line(Page page, int place) {
        return page.locator(
                ".templateoption:has(input[value='" + lines.get(place).id() + "'])");
    }

    private static void keep(Page page, String remark) {
        page.locator("label.option:has(input[name=means])").first().tap();
        page.locator("#f-remark").fill(remark);
        page.locator("button[value=agree]").tap();
        page.waitForURL("**/visits/1/agreement");
    }

    private List<String> accepted() {
        Agreement now = house.agreements.findNow(1).orElseThrow();
        return house.agreements.listLines(now.id()).stream()
                .filter(AgreementLine::accepted)
                .map(AgreementLine::title)
                .toList();
    }

    private static int overflow_px(Page page) {
        return ((Number) page.evaluate("document.documentElement.scrollWidth - document.documentElement.clientWidth"))
                .intValue();
    }
}
