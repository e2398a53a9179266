package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Desk;
import afterlength.workshop.ledger.ShopFolder;
import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * In a real browser: one viola goes from receipt to its final report by keyboard alone, and then no page of its visit has a serious
 * fault for axe. Person and instrument are invented.
 */
class PagesBrowserTest {
    static final Set<String> GRAVE = Set.of("serious", "critical");

    private static final List<String> PAGES = List.of(
            "",
            "instruments",
            "receive",
            "shelf",
            "shelf/backups",
            "shelf/tablets",
            "shelf/climate",
            "shelf/climate/wood",
            "shelf/glue",
            "shelf/glue/new",
            "shelf/glue/window",
            "instruments/1",
            "visits/1/examination",
            "visits/1/measures",
            "visits/1/photographs",
            "visits/1/drawings/front",
            "visits/1/agreement",
            "visits/1/advice/1",
            "visits/1/last-chance",
            "visits/1/invoice",
            "shelf/invoices",
            "visits/1/treatments",
            "visits/1/work",
            "visits/1/setup",
            "visits/1/handover",
            "visits/1/story",
            "shelf/archive",
            "owners/1/data",
            "instruments?find=seam");

    private static final Map<String, String> MEASURED_VIOLA = measuredViola();

    private static Map<String, String> measuredViola() {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("board_length_mm", "300");
        typed.put("board_radius_mm", "42");
        typed.put("nut_clearance_mm/bass", "0,5");
        typed.put("nut_clearance_mm/treble", "0.4");
        typed.put("nut_spacing_mm", "17");
        typed.put("bridge_spacing_mm", "38");
        typed.put("board_end_clearance_mm/bass", "6");
        typed.put("board_end_clearance_mm/treble", "4.5");
        typed.put("crown/radius_mm", "42");
        List<String> diameters_mm = List.of("1.1", "0.9", "0.75", "0.6");
        for (int string = 0; string < diameters_mm.size(); string++) {
            typed.put("strings/" + string + "/name", "CGDA".substring(string, string + 1));
            typed.put("strings/" + string + "/diameter_mm", diameters_mm.get(string));
        }
        return typed;
    }

    @TempDir
    Path shop;

    @Test
    void aVisitGoesThroughTheHouseByKeyboardAndItsPagesAreAccessible() throws IOException {
        House house = House.of(ShopFolder.open(shop), Clock.system(ZoneId.systemDefault()));
        try (Desk desk = house.openDesk(0);
                OpenBrowser browser = new OpenBrowser()) {
            Page page = browser.page();
            page.navigate(desk.address());
            Keyboard keyboard = new Keyboard(page);
            receive(keyboard, page);
            examine(keyboard, page);
            agree(keyboard, page);
            setUp(keyboard, page);
            assertThat(handOver(keyboard))
                    .contains("Viola, about 1905")
                    .contains("open seam (top)")
                    .contains("34.5")
                    .contains("Glue the open seam")
                    .contains("A person (invented)");
            assertThat(graveFaults(browser.pageForChecker(), desk.address())).isEmpty();
        }
    }

    private static void receive(Keyboard keyboard, Page page) {
        keyboard.follow("/receive");
        keyboard.type("f-owner_name", "A person (invented)");
        keyboard.chooseNext("kind");
        keyboard.type("f-name", "Viola, about 1905");
        keyboard.type("f-reason", "Shall be played again.");
        keyboard.press("Save");
        assertThat(page.locator("h1").innerText()).isEqualTo("Viola, about 1905");
    }

    private static void examine(Keyboard keyboard, Page page) {
        keyboard.follow("/visits/1/examination");
        writeFinding(keyboard, "top", "open seam (top)");
        writeFinding(keyboard, "top", "crack by the sound-hole");
        assertThat(page.locator("ol.findings > li").count()).isEqualTo(2);
        keyboard.follow("/visits/1/measures");
        writeMeasure(keyboard, "projection", "34,5", "0.5");
        writeMeasure(keyboard, "string length", "368", "1");
        assertThat(page.locator("table.measures tbody tr").count()).isEqualTo(2);
    }

    private static void writeFinding(Keyboard keyboard, String part, String kind) {
        keyboard.type("f-part", part);
        keyboard.type("f-kind", kind);
        keyboard.type("f-hand", "An invented hand");
        keyboard.press("Write it down");
    }

    private static void writeMeasure(Keyboard keyboard, String quantity, String value_mm, String plusMinus_mm) {
        keyboard.type("f-quantity", quantity);
        keyboard.type("f-value", value_mm);
        keyboard.type("f-plus_minus", plusMinus_mm);
        keyboard.type("f-unit", "mm");
        keyboard.type("f-method", "steel rule");
        keyboard.type("f-hand", "An invented hand");
        keyboard.press("Write it down");
    }

    private static void agree(Keyboard keyboard, Page page) {
        keyboard.follow("/instruments/1");
        keyboard.follow("/visits/1/agreement");
        keyboard.follow("/visits/1/treatments?finding=1");
        keyboard.tick("template", "seam");
        keyboard.press("Add what is ticked");
        keyboard.follow("/visits/1/agree?scope=PLAYING_ORDER");
        keyboard.chooseNext("means");
        keyboard.type("f-hand", "An invented hand");
        keyboard.press("Keep the agreement");
        assertThat(page.locator("main").innerText()).contains("What was agreed").contains("Glue the open seam");
    }

    /** The two measures stand in the form already; the rest is measured now. */
    private static void setUp(Keyboard keyboard, Page page) {
        keyboard.follow("/instruments/1");
        keyboard.follow("/visits/1/setup?moment=AFTER");
        assertThat(page.inputValue("[id='f-projection_mm']")).isEqualTo("34.5");
        MEASURED_VIOLA.forEach((field, value) -> keyboard.type("f-" + field, value));
        keyboard.press("Save this set-up");
        assertThat(page.locator("#live-answer p.answer").innerText()).startsWith("Cut the bridge ");
    }

    private static String handOver(Keyboard keyboard) throws IOException {
        keyboard.follow("/instruments/1");
        keyboard.follow("/visits/1/handover");
        keyboard.type("f-received_by", "A person (invented)");
        keyboard.type("f-hand", "An invented hand");
        keyboard.press("Save the handover");
        try (PDDocument report = Loader.loadPDF(keyboard.openPaper("/visits/1/final-report.pdf"))) {
            return new PDFTextStripper().getText(report);
        }
    }

    private static Set<String> graveFaults(Page page, String address) {
        Set<String> faults = new TreeSet<>();
        for (String path : PAGES) {
            page.navigate(address + path);
            new AxeBuilder(page)
                    .analyze().getViolations().stream()
                            .filter(rule -> GRAVE.contains(rule.getImpact()))
                            .map(Rule::getId)
                            .forEach(id -> faults.add("/" + path + ": " + id));
        }
        return faults;
    }
}
