package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.demo.DemoClock;
import afterlength.start.demo.DemoShop;
import afterlength.workshop.desk.Desk;
import afterlength.workshop.ledger.ShopFolder;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.LoadState;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** In a real browser, on the demonstration: a joint did not dry, and what that does to the promises is seen before a plan is taken. */
class PlanBrowserTest {
    private static final Instant TUESDAY = Instant.parse("2026-11-10T14:00:00Z");
    private static final String CELLO = "School cello, 1960s";

    @TempDir
    Path folder;

    @Test
    void didNotDryShowsOldAndNewPromisesBeforeAPlanIsTaken() throws IOException {
        DemoClock clock = new DemoClock(TUESDAY, ZoneId.systemDefault());
        House house = House.of(ShopFolder.open(folder), clock);
        DemoShop.fill(house.demoStores(clock), TUESDAY);
        try (Desk desk = house.openDesk(0);
                OpenBrowser browser = new OpenBrowser()) {
            noPageHasAGraveFault(house, desk.address(), browser.pageForChecker());
            didNotDry(house, desk.address(), browser.page());
        }
    }

    private static void didNotDry(House house, String address, Page page) {
        LocalDate promised = cello(house);
        page.navigate(address);
        Locator drying =
                page.locator("section[aria-labelledby=drying] li", new Page.LocatorOptions().setHasText(CELLO));
        drying.getByText("Not dry, not ready").click();
        page.fill("[name=more_hours]", "120");
        page.locator("button[type=submit]:has-text('Write it down')").click();
        page.waitForURL("**/plan/drafts/**");
        assertThat(page.locator(".because").innerText())
                .isEqualTo("“warm, glue, clamp” on " + CELLO + " is not ready yet. It waits 120 h more.");
        page.waitForSelector("#plan-better:not([data-working])");
        Locator row = page.locator("section.draft tbody tr", new Page.LocatorOptions().setHasText(CELLO))
                .first();
        assertThat(row.locator(".old").innerText()).isEqualTo("Tue 17 Nov");
        String newDay = row.locator(".new").innerText().strip();
        assertThat(newDay).isNotEqualTo("Tue 17 Nov").matches("\\w{3} \\d{1,2} Nov");
        assertThat(cello(house)).as("nothing is promised before it is taken").isEqualTo(promised);
        page.locator("section.draft button:has-text('Take this plan')").first().click();
        page.waitForLoadState(LoadState.NETWORKIDLE);
        assertThat(page.locator(".notice p").innerText()).isEqualTo("The plan is taken. Today follows it.");
        assertThat(page.locator("table.promises tr", new Page.LocatorOptions().setHasText(CELLO))
                        .locator(".old")
                        .innerText())
                .isEqualTo(newDay);
        assertThat(cello(house)).isAfter(promised);
        page.navigate(address);
        assertThat(page.locator("section[aria-labelledby=drying]").innerText())
                .contains(CELLO + ", until Sunday 15 November");
    }

    private static void noPageHasAGraveFault(House house, String address, Page page) {
        long step = house.steps.list(3).get(3).id();
        for (String each : List.of(
                "",
                "plan",
                "plan/again",
                "plan/what-if?without=" + step,
                "plan/steps/" + step,
                "plan/visits/3",
                "plan/absences/new",
                "shelf/bench")) {
            page.navigate(address + each);
            List<String> grave = new AxeBuilder(page)
                    .analyze().getViolations().stream()
                            .filter(rule -> PagesBrowserTest.GRAVE.contains(rule.getImpact()))
                            .map(Rule::getId)
                            .toList();
            assertThat(grave).as("/" + each).isEmpty();
        }
    }

    private static LocalDate cello(House house) {
        LocalDate promised = house.visits.get(3).promisedOn();
        if (promised == null) {
            throw new AssertionError("the cello is promised");
        }
        return promised;
    }
}
