package afterlength.workshop.retouch;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Spectrum;
import afterlength.workshop.desk.OpenedDesk;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Colours come onto the shelf from a file or from typed values; nothing is kept before it was looked at. */
class PalettePageTest {
    private static final String FILE = RetouchShop.file(
            RetouchShop.line("white", Spectrum.even(PaletteGrid.WAVELENGTHS, 0.86)),
            RetouchShop.line("black", Spectrum.even(PaletteGrid.WAVELENGTHS, 0.03)),
            RetouchShop.line("yellow on white", RetouchShop.film(495, 20, 0.02, 1, 0.86)),
            RetouchShop.line("yellow on black", RetouchShop.film(495, 20, 0.02, 2, 0.03)),
            "torn line,0.1,x");

    @TempDir
    Path folder;

    private RetouchShop shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new RetouchShop(folder);
        desk = shop.open();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void aFileIsShownBeforeAnythingIsKept() {
        OpenedDesk.Answer preview = desk.post("/shelf/palette/import", "text", FILE);
        assertThat(preview.status()).isEqualTo(200);
        assertThat(preview.words(".answer")).isEqualTo("4 samples read, one line left out.");
        assertThat(preview.lines("table.rejected tbody tr"))
                .containsExactly("line 6 torn line,0.1,x at 410 nm “x” stands, which is not a number");
        assertThat(shop.palette.list()).isEmpty();
    }

    @Test
    void filmsOverWhiteAndBlackMakeAColour() {
        OpenedDesk.Answer kept = desk.postAndFollow(
                "/shelf/palette/import/fit",
                "text",
                FILE,
                "name",
                "yellow (invented)",
                "medium",
                "spirit varnish",
                "reversible_with",
                "alcohol",
                "hand",
                "bench",
                "films/0/film",
                "2",
                "films/0/ground",
                "0",
                "films/0/coats",
                "1",
                "films/1/film",
                "3",
                "films/1/ground",
                "1",
                "films/1/coats",
                "2,0");
        assertThat(kept.words("h1")).isEqualTo("yellow (invented)");
        assertThat(kept.words(".answer")).startsWith("Reckoned back from the fit, its 2 films come out within ΔE00 0.");
        PaletteColour colour = shop.palette.list().get(0);
        assertThat(colour.colourClass()).isEqualTo(ColourClass.INSTRUMENT);
        assertThat(kept.words("dl.facts"))
                .contains(
                        "measured by an instrument: about 0.3 off in daylight, seldom above 0.4; under a lamp it is reckoned"
                                + " from the reflectances.");
    }

    @Test
    void oneGroundIsNotEnough() {
        OpenedDesk.Answer refused = desk.post(
                "/shelf/palette/import/fit",
                "text",
                FILE,
                "name",
                "yellow",
                "medium",
                "spirit varnish",
                "reversible_with",
                "alcohol",
                "hand",
                "bench",
                "films/0/film",
                "2",
                "films/0/ground",
                "0",
                "films/0/coats",
                "1",
                "films/1/film",
                "2",
                "films/1/ground",
                "0",
                "films/1/coats",
                "2");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .containsExactly(
                        "All films lie over one ground, so what the colour covers cannot be told from what it colours. Add a"
                                + " film over the other ground, such as black.");
        assertThat(shop.palette.list()).isEmpty();
    }

    @Test
    void everyProblemOfTypedColoursStandsAtOnce() {
        OpenedDesk.Answer refused = desk.post(
                "/shelf/palette/new",
                "name",
                "amber",
                "medium",
                "spirit varnish",
                "reversible_with",
                "alcohol",
                "hand",
                "bench",
                "films/0/ground_l",
                "95",
                "films/0/ground_a",
                "0",
                "films/0/ground_b",
                "x",
                "films/0/film_l",
                "40",
                "films/0/film_a",
                "120",
                "films/0/film_b",
                "-120",
                "films/0/coats",
                "0");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .containsExactly(
                        "How the colours are known is not chosen; choose one of: instrument, measured patches, transferred, one"
                                + " photograph, uncalibrated.",
                        "The ground of row 1, b*, is “x”, which is not a number. Allowed is −128 to 128, such as 12.5 or 12,5.",
                        "The film of row 1 is L* 40, a* 120, b* −120, a colour that no surface can have. Check the three values,"
                                + " and that their white is D65.",
                        "The coats of row 1 is 0; allowed is 0.05 to 20 coats.");
        assertThat(refused.page().select("[name=films/0/ground_b]").val()).isEqualTo("x");
    }

    @Test
    void typedColoursKeepTheirClass() {
        OpenedDesk.Answer kept = desk.postAndFollow(
                "/shelf/palette/new",
                "name",
                "amber",
                "medium",
                "spirit varnish",
                "reversible_with",
                "alcohol",
                "hand",
                "bench",
                "colour_class",
                "MEASURED_PATCHES",
                "films/0/ground_l",
                "95",
                "films/0/ground_a",
                "0",
                "films/0/ground_b",
                "2",
                "films/0/film_l",
                "70",
                "films/0/film_a",
                "15",
                "films/0/film_b",
                "60",
                "films/0/coats",
                "1",
                "films/1/ground_l",
                "8",
                "films/1/ground_a",
                "0",
                "films/1/ground_b",
                "0",
                "films/1/film_l",
                "9",
                "films/1/film_a",
                "1",
                "films/1/film_b",
                "1",
                "films/1/coats",
                "1");
        assertThat(kept.words("dl.facts"))
                .contains(
                        "photograph corrected by measured patches: about 1.5 off in daylight, seldom above 4.3, about 4.7"
                                + " under a warm lamp. Of the colour itself.");
        assertThat(shop.palette.list().get(0).spectral()).isFalse();
    }

    @Test
    void aColourIsPutAwayAndTakenBack() {
        PaletteColour colour = shop.keep("yellow", 495, 20, 0.02);
        OpenedDesk.Answer away = desk.postAndFollow("/shelf/palette/" + colour.id() + "/put-away");
        assertThat(away.words("summary")).isEqualTo("One colour is put away");
        desk.post("/shelf/palette/" + colour.id() + "/take-back");
        assertThat(shop.palette.list()).hasSize(1);
    }
}
