package afterlength.start;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The Chromium of this machine, without a window, for as long as a test needs it. */
final class OpenBrowser implements AutoCloseable {
    private final Playwright playwright = Playwright.create();
    private final Browser browser = playwright.chromium().launch(launching());

    /** A page as a person has it, with the shop's own content policy in force. */
    Page page() {
        return browser.newPage();
    }

    /** A page into which an accessibility checker may put its script. */
    Page pageForChecker() {
        return browser.newContext(new Browser.NewContextOptions().setBypassCSP(true))
                .newPage();
    }

    /** A page on a tablet held upright, touched and not clicked. */
    Page tabletPage() {
        return browser.newContext(new Browser.NewContextOptions()
                        .setViewportSize(820, 1180)
                        .setDeviceScaleFactor(2)
                        .setHasTouch(true)
                        .setIsMobile(true))
                .newPage();
    }

    /** A page on a screen of its own size, pressed by a finger. */
    Page phone(Browser.NewContextOptions screen) {
        return browser.newContext(screen).newPage();
    }

    private static BrowserType.LaunchOptions launching() {
        Path chromium = Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
                .map(Path::of)
                .filter(Files::exists)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no Chromium on this machine; ./verify installs it"));
        return new BrowserType.LaunchOptions()
                .setExecutablePath(chromium)
                .setArgs(List.of("--no-sandbox", "--disable-background-networking", "--no-first-run"));
    }

    @Override
    public void close() {
        playwright.close();
    }
}
