package afterlength.start;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Desk;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.work.DiaryEntry;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A tablet at the bench: the network drops, the machine is switched off and on, a timer runs, keys are looked up. */
class BenchUseBrowserTest {
    @TempDir
    static Path shop;

    private static House house;

    private Desk desk;
    private OpenBrowser browser;
    private long lastBefore;

    @BeforeAll
    static void fill() {
        house = DemoHouse.in(shop);
    }

    @BeforeEach
    void open() {
        lastBefore = house.visits.listInHouse().stream()
                .flatMap(visit -> house.diary.listHistory(visit.id()).stream())
                .mapToLong(DiaryEntry::id)
                .max()
                .orElse(0);
        desk = house.openDesk(0);
        browser = new OpenBrowser();
    }

    @AfterEach
    void close() {
        browser.close();
        desk.close();
        house.visits.listInHouse().forEach(this::takeBack);
    }

    /** Leaves the step for the next test as it was. */
    private void takeBack(Visit visit) {
        house.diary.listNow(visit.id()).stream()
                .filter(entry -> entry.id() > lastBefore)
                .forEach(entry -> house.diary.withdraw(entry.id(), Instant.now()));
    }

    /** Today, with the worker standing before it and a copy kept. */
    private Page today() {
        Page page = browser.page();
        page.navigate(desk.address());
        page.waitForCondition(() -> isTrue(page, "navigator.serviceWorker.controller !== null"));
        page.navigate(desk.address());
        page.waitForCondition(() -> isTrue(page, "caches.match('/').then(kept => kept !== undefined)"));
        return page;
    }

    private static boolean isTrue(Page page, String condition) {
        return Boolean.TRUE.equals(page.evaluate(condition));
    }

    private static Locator start(Page page) {
        return page.locator("form[action$='/start'] button").first();
    }

    private List<DiaryEntry> diary(String action) {
        long visit =
                house.steps.get(Long.parseLong(action.replaceAll("\\D", ""))).visitId();
        return house.diary.listNow(visit);
    }

    @Test
    void aTapWithoutNetworkIsMarkedKeptAndTakenOnce() {
        Page page = today();
        String action = page.locator("form[action$='/start']").first().getAttribute("action");
        int before = diary(action).size();
        page.context().setOffline(true);
        start(page).click();
        assertThat(page.locator("#waiting")).containsText("Kept on this screen, waiting to be sent:");
        assertThat(page.locator("form[data-waiting] .waits")).hasText("waiting to be sent");
        assertThat(start(page)).isDisabled();
        assertThat(diary(action)).hasSize(before);
        page.context().setOffline(false);
        page.waitForURL(Pattern.compile(".*\\?entry=\\d+"));
        assertThat(page.locator(".notice")).containsText("In the diary:");
        assertThat(page.locator("#waiting")).isHidden();
        assertThat(diary(action)).hasSize(before + 1);
    }

    /** The machine itself is off: Today opens from the screen's own copy, says so, and a tap made there reaches the machine. */
    @Test
    void todayOpensWhileTheMachineIsOffAndNothingIsLost() {
        Page page = today();
        String address = desk.address();
        String action = page.locator("form[action$='/start']").first().getAttribute("action");
        String sentence = page.locator(".answer.today").innerText();
        int before = diary(action).size();
        int port = Integer.parseInt(address.replaceAll(".*:(\\d+)/", "$1"));
        desk.close();
        page.navigate(address);
        assertThat(page.locator(".answer.today")).hasText(sentence);
        assertThat(page.locator("#waiting"))
                .containsText("The workshop’s machine does not answer. This page is as it was at");
        start(page).click();
        assertThat(page.locator("#waiting li")).containsText("Start:");
        page.navigate(address + "instruments");
        assertThat(page.locator("h1")).hasText("The workshop’s machine does not answer.");
        page.locator("a.action").click();
        assertThat(page.locator("#waiting li")).containsText("Start:");
        desk = house.openDesk(port);
        page.waitForURL(Pattern.compile(".*\\?entry=\\d+"));
        assertThat(page.locator("#waiting")).isHidden();
        assertThat(diary(action)).hasSize(before + 1);
    }

    /** The machine wrote it, but the answer was lost on the way: the same tap comes again and is not written twice. */
    @Test
    void anAnswerLostOnTheWayDoesNotWriteTwice() {
        Page page = today();
        String action = page.locator("form[action$='/start']").first().getAttribute("action");
        int before = diary(action).size();
        int[] sent = {0};
        page.route("**" + action, route -> {
            sent[0]++;
            if (sent[0] == 1) {
                route.fetch();
                route.abort();
            } else {
                route.resume();
            }
        });
        start(page).click();
        page.waitForURL(Pattern.compile(".*\\?entry=\\d+"));
        assertThat(sent[0]).isEqualTo(2);
        assertThat(diary(action)).hasSize(before + 1);
    }

    /** The lock of the browser is replaced by one that counts, since a browser without a window has no screen. */
    @Test
    void theScreenStaysAwakeWhileATimerRunsAndOnlyThen() {
        Page page = browser.page();
        page.addInitScript("""
                window.held = 0;
                Object.defineProperty(navigator, 'wakeLock', { value: { request: () => {
                  window.held++;
                  const lock = new EventTarget();
                  lock.release = () => { window.held--; lock.dispatchEvent(new Event('release')); return Promise.resolve(); };
                  return Promise.resolve(lock); } } });""");
        page.navigate(desk.address());
        page.evaluate(
                "document.querySelectorAll('[role=timer][data-left]').forEach(t => t.setAttribute('data-left', '900'))");
        assertThat(page.locator("#awake")).containsText("The screen stays awake while a timer runs.");
        assertThat(page.evaluate("window.held")).isEqualTo(1);
        page.locator("#awake button").click();
        assertThat(page.locator("#awake")).containsText("The screen may go dark; the timer runs on.");
        assertThat(page.evaluate("window.held")).isEqualTo(0);
        page.locator("#awake button").click();
        page.waitForCondition(() -> Integer.valueOf(1).equals(page.evaluate("window.held")));
        page.evaluate("document.querySelectorAll('[role=timer][data-left]').forEach(t => t.classList.add('due'))");
        page.waitForCondition(() -> Integer.valueOf(0).equals(page.evaluate("window.held")));
        assertThat(page.locator("#awake")).isHidden();
    }

    @Test
    void aBrowserThatCannotKeepTheScreenAwakeSaysSo() {
        Page page = browser.page();
        page.addInitScript("delete Navigator.prototype.wakeLock");
        page.navigate(desk.address());
        page.evaluate(
                "document.querySelectorAll('[role=timer][data-left]').forEach(t => t.setAttribute('data-left', '900'))");
        assertThat(page.locator("#awake")).containsText("This browser does not keep the screen awake.");
    }

    @Test
    void theMapOfTheKeysOpensAndClosesByKeyAndLettersCanBeSwitchedOff() {
        Page page = browser.page();
        page.navigate(desk.address() + "shelf");
        page.keyboard().press("?");
        assertThat(page.locator("#keys")).containsText("find an owner, an instrument, words of a finding");
        page.keyboard().press("Escape");
        assertThat(page.locator("#keys")).isHidden();
        page.keyboard().press("/");
        assertThat(page.locator("#find")).isFocused();
        page.keyboard().type("it?");
        assertThat(page.locator("#find")).hasValue("it?");
        assertThat(page.locator("#keys")).isHidden();
        page.locator("body").focus();
        page.evaluate("document.activeElement.blur()");
        page.keyboard().press("t");
        page.waitForURL(desk.address());
        page.locator(".foot button").click();
        page.locator("#keys input").uncheck();
        page.keyboard().press("Escape");
        page.keyboard().press("s");
        page.keyboard().press("?");
        assertThat(page.locator("#keys")).isVisible();
        assertThat(page).hasURL(desk.address());
    }

    @Test
    void theSoundOfATimerCanBeTriedOnToday() {
        Page page = browser.page();
        page.navigate(desk.address());
        Locator button = page.locator("[data-sound] button").or(page.locator("p.do > button.small:has-text('sound')"));
        button.first().click();
        assertThat(button.first()).hasText("Sound test again; it is on while this page stays open");
        assertThat(button.first()).isEnabled();
    }

    @Test
    void theCardOfTheInstalledPageIsWhole() {
        Page page = browser.page();
        page.navigate(desk.address());
        Object card = page.evaluate("""
                fetch(document.querySelector('link[rel=manifest]').href).then(a => a.json()).then(async m => {
                  const icons = await Promise.all(m.icons.map(i => fetch(i.src).then(a => a.ok)));
                  return [m.name, m.start_url, m.display, icons.every(ok => ok)].join('|'); })""");
        assertThat(card).isEqualTo("Workshop by the Old Ferry|/|standalone|true");
    }
}
