package afterlength.workshop.retouch;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Light;
import afterlength.craft.colour.Spectrum;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.work.DiaryEntry;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a measured loss to its recipe, a coat in the diary, a reading and the top-up. */
class RetouchPageTest {
    private static final Spectrum GROUND = RetouchShop.film(540, 60, 0.05, 0.3, 0.6);

    @TempDir
    Path folder;

    private RetouchShop shop;
    private OpenedDesk desk;
    private String visit;

    @BeforeEach
    void open() {
        shop = new RetouchShop(folder);
        shop.keep("yellow", 495, 20, 0.02);
        shop.keep("red", 585, 14, 0.03);
        desk = shop.open();
        visit = "/visits/" + shop.visit.id();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private OpenedDesk.Answer measured() {
        Spectrum target = RetouchShop.film(585, 14, 0.03, 0.6, 0.35);
        return desk.postAndFollow(
                visit + "/retouch/new",
                "place",
                "the worn edge",
                "finding",
                "" + shop.finding,
                "ground_class",
                "INSTRUMENT",
                "ground_file",
                RetouchShop.file(RetouchShop.line("ground", GROUND)),
                "target_class",
                "INSTRUMENT",
                "target_file",
                RetouchShop.file(RetouchShop.line("target", target)),
                "colours",
                "1",
                "colours",
                "2",
                "colorants",
                "3",
                "film_coats",
                "3",
                "hand",
                "bench");
    }

    @Test
    void aMeasuredLossHasARecipeWithItsLimits() {
        OpenedDesk.Answer page = measured();
        assertThat(page.words("h1")).isEqualTo("Retouch: the worn edge");
        assertThat(page.words(".answer")).matches("Mix \\d+ parts .*; the whole film is [\\d.]+ coats\\.");
        assertThat(page.page().select("main > .reason").get(0).text())
                .matches(
                        "ΔE00 to the varnish beside it: [\\d.]+ in daylight \\(D65\\), [\\d.]+ under an incandescent lamp \\(A\\), "
                                + "[\\d.]+ under a warm LED lamp \\(LED-B1\\)\\. "
                                + "Reckoned, from readings that are themselves about 0\\.3 off in daylight\\.");
        assertThat(page.page().select("main > .patches rect")).hasSize(12);
        assertThat(page.page().select(".patches rect").attr("fill")).isEqualTo(Seen.hex(GROUND, Light.D65));
        assertThat(page.words(".limits"))
                .contains("Gloss decides as much as pigment", "A screen shows colours only roughly", "Two-flux theory");
        assertThat(page.words("dl.facts"))
                .contains("varnish wear, varnish", "measured by an instrument, about 0.3 off");
    }

    @Test
    void aCoatStandsInTheDiaryWithWhatUndoesIt() {
        OpenedDesk.Answer page = measured();
        String coat = page.page().select("a.action[href*=coat]").attr("href");
        OpenedDesk.Answer form = desk.get(coat);
        assertThat(form.page().select("#f-part_pct").val()).isEqualTo("75");
        OpenedDesk.Answer laid = desk.postAndFollow(
                coat.replaceFirst("\\?.*", ""),
                "recipe",
                coat.replaceFirst(".*=", ""),
                "part_pct",
                "75",
                "isolating",
                "thin shellac",
                "reversible_with",
                "alcohol",
                "remark",
                "on the line only",
                "hand",
                "bench");
        assertThat(laid.words(".answer")).startsWith("A coat is laid. When it is dry");
        DiaryEntry entry = shop.diary.listNow(shop.visit.id()).get(0);
        assertThat(entry.writing().material()).startsWith("retouch colour: ");
        assertThat(entry.writing().reversibleWith()).isEqualTo("alcohol");
        assertThat(entry.writing().remark()).isEqualTo("Over: thin shellac.\non the line only");
    }

    @Test
    void whatIsMissingIsWorkedOutFromTheNextReading() {
        aCoatStandsInTheDiaryWithWhatUndoesIt();
        Spectrum between = RetouchShop.film(560, 40, 0.03, 0.4, 0.45);
        OpenedDesk.Answer next = desk.postAndFollow(
                visit + "/retouch/1/reading",
                "seen_class",
                "INSTRUMENT",
                "seen_file",
                RetouchShop.file(RetouchShop.line("now", between)),
                "hand",
                "bench");
        assertThat(next.status()).isEqualTo(200);
        RetouchCase one = new CaseDesk(shop.retouches, shop.palette, shop.coats).get(1);
        assertThat(one.now())
                .hasValueSatisfying(seen -> assertThat(seen.values()).isEqualTo(between.values()));
        assertThat(one.question().orElseThrow().ground().values()).isEqualTo(between.values());
        assertThat(one.question().orElseThrow().limits().film_um()).isLessThan(3);
        assertThat(next.words("table")).contains("ΔE00", "thin shellac");
    }

    @Test
    void anIsolatingLayerIsAskedFor() {
        OpenedDesk.Answer page = measured();
        String coat = page.page().select("a.action[href*=coat]").attr("href");
        OpenedDesk.Answer refused = desk.post(
                coat.replaceFirst("\\?.*", ""),
                "recipe",
                "7-9",
                "part_pct",
                "0",
                "reversible_with",
                "",
                "hand",
                "bench");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .containsExactly(
                        "The part of the film that was laid is 0; allowed is 1 to 150 %.",
                        "The isolating layer is empty. Write a few words.",
                        "What takes it off again is empty. Write a few words.",
                        "This recipe does not stand any more: a coat was laid or measured meanwhile. Choose one of those shown.");
        assertThat(shop.diary.listNow(shop.visit.id())).isEmpty();
    }

    @Test
    void everyProblemOfALossStandsAtOnce() {
        OpenedDesk.Answer refused = desk.post(
                visit + "/retouch/new",
                "place",
                "",
                "ground_class",
                "UNCALIBRATED",
                "ground_file",
                "400,410",
                "target_class",
                "ONE_PHOTOGRAPH",
                "target_l",
                "42",
                "target_a",
                "18",
                "target_b",
                "36",
                "colorants",
                "4",
                "film_coats",
                "3",
                "hand",
                "bench");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .containsExactly(
                        "The place is empty. Write a few words.",
                        "The ground is given as an instrument's lines and called “uncalibrated photograph”; choose “measured by an"
                                + " instrument”, or take the lines out.",
                        "The ground needs the lines of one sample; none was found. No wavelengths were found, neither in a heading"
                                + " nor down the first column, so nothing was read. The first line left out: line 1, no wavelengths"
                                + " to read it by.",
                        "No colours are chosen; choose 1 to 30 of the palette.",
                        "The colours in one recipe is “4”; allowed is a whole number from 1 to 3.");
    }

    @Test
    void aLossKnownByItsColourAloneSaysWhatThatLeavesOpen() {
        OpenedDesk.Answer page = desk.postAndFollow(
                visit + "/retouch/new",
                "place",
                "edge",
                "ground_class",
                "ONE_PHOTOGRAPH",
                "ground_l",
                "70",
                "ground_a",
                "6",
                "ground_b",
                "28",
                "target_class",
                "ONE_PHOTOGRAPH",
                "target_l",
                "45",
                "target_a",
                "25",
                "target_b",
                "38",
                "colours",
                "1",
                "colours",
                "2",
                "colorants",
                "2",
                "film_coats",
                "3",
                "hand",
                "bench");
        assertThat(page.words(".limits")).contains("Ground or target is known by its colour alone");
        assertThat(page.words("dl.facts")).contains("Only of the difference of two places in one photograph");
        assertThat(shop.retouches.get(1).groundClass()).isEqualTo(ColourClass.ONE_PHOTOGRAPH);
    }
}
