package afterlength.start;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;

/** A person at the keys: every place is reached with Tab from where the page stands, and nothing is clicked. */
final class Keyboard {
    private static final int TABS_AT_MOST = 250;

    private final Page page;
    private int pagesLoaded;

    Keyboard(Page page) {
        this.page = page;
        page.onDOMContentLoaded(loaded -> pagesLoaded++);
    }

    /** Tabs on to the field and writes over what stands there. */
    void type(String fieldId, String text) {
        reach("document.activeElement.id === '" + fieldId + "'", fieldId);
        page.keyboard().press("Control+A");
        page.keyboard().type(text);
    }

    /** Tabs on to a group of choices with one way marked, and moves the mark on by a key. */
    void chooseNext(String groupName) {
        reach("document.activeElement.name === '" + groupName + "'", groupName);
        page.keyboard().press("ArrowDown");
    }

    void tick(String name, String value) {
        reach(
                "document.activeElement.name === '" + name + "' && document.activeElement.value === '" + value + "'",
                name);
        page.keyboard().press("Space");
    }

    /** Tabs on to a link and follows it. */
    void follow(String address) {
        reachLink(address);
        enterToNextPage();
    }

    /**
     * Tabs on to a link to a paper and follows it. The browser keeps the file for its own viewer and shows a test only the viewer's
     * page, so the file is taken from the same address once more.
     */
    byte[] openPaper(String address) {
        reachLink(address);
        Response paper = page.waitForResponse(
                response -> response.url().endsWith(address),
                () -> page.keyboard().press("Enter"));
        return page.request().get(paper.url()).body();
    }

    /** Tabs on to the button with these words and presses it; the answer is a new page. */
    void press(String words) {
        reach(
                "document.activeElement.matches('button') && document.activeElement.textContent.trim() === '" + words
                        + "'",
                words);
        enterToNextPage();
    }

    private void enterToNextPage() {
        int before = pagesLoaded;
        page.keyboard().press("Enter");
        page.waitForCondition(() -> pagesLoaded > before);
    }

    private void reachLink(String address) {
        reach("document.activeElement.getAttribute('href') === '" + address + "'", address);
    }

    void reach(String condition, String what) {
        for (int tabs = 0; tabs < TABS_AT_MOST; tabs++) {
            if (Boolean.TRUE.equals(page.evaluate(condition))) {
                return;
            }
            page.keyboard().press("Tab");
        }
        throw new AssertionError("the keyboard did not reach " + what + " on " + page.url());
    }
}
