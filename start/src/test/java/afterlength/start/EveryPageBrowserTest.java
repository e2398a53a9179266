package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Desk;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every kind of page that links lead to in the demonstration shop, in a real browser. */
class EveryPageBrowserTest {
    /** Without it every page is plain text that fits everywhere and offends no checker. */
    private static final String STYLED = "getComputedStyle(document.querySelector('.head')).display === 'flex'";

    @TempDir
    static Path shop;

    private static Desk desk;
    private static OpenBrowser browser;

    @BeforeAll
    static void open() {
        desk = DemoHouse.in(shop).openDesk(0);
        browser = new OpenBrowser();
    }

    @AfterAll
    static void close() {
        browser.close();
        desk.close();
    }

    /** Light and dark; the checker needs its script in the page, which the shop's own policy forbids. */
    @Test
    void axeFindsNothingOnAnyPage() {
        Set<String> faults = new TreeSet<>();
        Page page = browser.pageForChecker();
        Set<String> kinds = LinkWalk.of(page, desk.address(), (kind, shown) -> {
            if (!Boolean.TRUE.equals(shown.evaluate(STYLED))) {
                faults.add(kind + ": without its style sheet");
            }
            new AxeBuilder(shown)
                    .analyze()
                    .getViolations()
                    .forEach(rule -> faults.add(kind + ": " + rule.getId() + " at "
                            + rule.getNodes().get(0).getTarget()));
        });
        assertThat(faults).isEmpty();
        assertThat(kinds).containsAll(KnownPages.ALL);
    }

    /** The lettering twice as large, on a screen of 1280; and the same screen magnified to twice, which leaves 640 of it. */
    @Test
    void nothingIsLostAtTwiceTheSize() {
        Set<String> wide = new TreeSet<>();
        Page page = browser.page();
        Set<String> kinds = LinkWalk.of(page, desk.address(), (kind, shown) -> {
            shown.setViewportSize(640, 512);
            noteWhatIsCut(kind + " magnified", shown, wide);
            shown.setViewportSize(1280, 1024);
            shown.evaluate("document.documentElement.style.fontSize = '225%'");
            noteWhatIsCut(kind + " large letters", shown, wide);
        });
        assertThat(wide).isEmpty();
        assertThat(kinds).containsAll(KnownPages.ALL);
    }

    private static void noteWhatIsCut(String where, Page page, Set<String> wide) {
        Object cut = page.evaluate("""
                (() => {
                  const over = document.documentElement.scrollWidth - document.documentElement.clientWidth;
                  if (over <= 1) return '';
                  const far = Array.from(document.querySelectorAll('main *, header *')).filter(e =>
                    !e.closest('.scroll') && e.getBoundingClientRect().right > document.documentElement.clientWidth + 1);
                  return over + ' px too wide: ' + far.slice(-1).map(e => e.tagName + '.' + e.className + '#' + e.id).join('');
                })()""");
        if (!cut.equals("")) {
            wide.add(where + ": " + cut);
        }
    }

    /** With a finger: what is pressed on Today is at least 44 pixels high and wide. */
    @Test
    void whatIsPressedOnTodayIsLargeEnoughForAThumb() {
        Page page = browser.phone(new Browser.NewContextOptions()
                .setViewportSize(390, 844)
                .setHasTouch(true)
                .setIsMobile(true));
        page.navigate(desk.address());
        assertThat(page.evaluate(STYLED)).as("the style sheet has come").isEqualTo(true);
        assertThat(page.evaluate("""
                Array.from(document.querySelectorAll('main button, main .action, main .quiet, main select, main .line, nav a'))
                  .filter(e => e.getClientRects().length > 0 && (e.getBoundingClientRect().height < 44 || e.getBoundingClientRect().width < 44))
                  .map(e => e.textContent.trim() + ' ' + e.getBoundingClientRect().height).join('; ')""")).isEqualTo("");
        noteNothingWide(page);
    }

    private static void noteNothingWide(Page page) {
        Set<String> wide = new TreeSet<>();
        noteWhatIsCut("Today on a telephone", page, wide);
        assertThat(wide).isEmpty();
    }
}
