package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Desk;
import afterlength.workshop.ledger.ShopFolder;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** In a real browser: an instrument is received by keyboard alone, and no page of its visit has a serious fault for axe. */
class PagesBrowserTest {
    static final Set<String> GRAVE = Set.of("serious", "critical");

    @TempDir
    Path shop;

    @Test
    void anInstrumentIsReceivedByKeyboardAndItsPagesAreAccessible() {
        House house = House.of(ShopFolder.open(shop), Clock.system(ZoneId.systemDefault()));
        try (Desk desk = house.openDesk(0);
                Playwright playwright = Playwright.create();
                Browser browser = playwright.chromium().launch(launching())) {
            Page page = browser.newContext(new Browser.NewContextOptions().setBypassCSP(true))
                    .newPage();
            receiveByKeyboard(page, desk.address());
            assertThat(page.locator("h1").innerText()).isEqualTo("Viola, about 1905");
            Set<String> faults = new TreeSet<>();
            for (String path : List.of(
                    "",
                    "instruments",
                    "receive",
                    "shelf",
                    "instruments/1",
                    "visits/1/examination",
                    "visits/1/measures",
                    "visits/1/photographs",
                    "visits/1/agreement",
                    "visits/1/work",
                    "visits/1/setup",
                    "visits/1/handover")) {
                page.navigate(desk.address() + path);
                new AxeBuilder(page)
                        .analyze().getViolations().stream()
                                .filter(rule -> GRAVE.contains(rule.getImpact()))
                                .map(Rule::getId)
                                .forEach(id -> faults.add("/" + path + ": " + id));
            }
            assertThat(faults).isEmpty();
        }
    }

    private static void receiveByKeyboard(Page page, String address) {
        page.navigate(address + "receive");
        type(page, "f-owner_name", "A person (invented)");
        reach(page, "f-kind-VIOLIN");
        page.keyboard().press("ArrowDown");
        type(page, "f-name", "Viola, about 1905");
        type(page, "f-reason", "Shall be played again.");
        reach(page, "");
        page.keyboard().press("Enter");
        page.waitForURL("**/instruments/1");
    }

    private static void type(Page page, String id, String text) {
        reach(page, id);
        page.keyboard().type(text);
    }

    /** Tabs on until the field, or with no name the button that saves, has the focus. */
    private static void reach(Page page, String id) {
        String there = id.isEmpty()
                ? "document.activeElement.matches('main form button[type=submit]')"
                : "document.activeElement.id === '" + id + "'";
        for (int presses = 0; presses < 60; presses++) {
            if (Boolean.TRUE.equals(page.evaluate(there))) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("the keyboard did not reach " + (id.isEmpty() ? "the button that saves" : id));
    }

    static BrowserType.LaunchOptions launching() {
        Path chromium = Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
                .map(Path::of)
                .filter(Files::exists)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no Chromium on this machine; ./verify installs it"));
        return new BrowserType.LaunchOptions()
                .setExecutablePath(chromium)
                .setArgs(List.of("--no-sandbox", "--disable-background-networking", "--no-first-run"));
    }
}
