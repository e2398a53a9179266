package afterlength.workshop.retouch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Spectrum;
import afterlength.craft.varnish.Ingredient;
import afterlength.craft.varnish.Part;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.work.DiaryEntry;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the stores of this stage keep in a real database comes back to the last digit, and nothing of it is written over. */
class RetouchStoreTest {
    private static final Spectrum GROUND = RetouchShop.film(540, 60, 0.05, 0.3, 0.6);
    private static final Spectrum TARGET = RetouchShop.film(585, 14, 0.03, 0.6, 0.35);

    @TempDir
    Path folder;

    private RetouchShop shop;
    private PaletteColour yellow;
    private PaletteColour red;

    @BeforeEach
    void open() {
        shop = new RetouchShop(folder);
        yellow = shop.keep("yellow", 495, 20, 0.02);
        red = shop.keep("red", 585, 14, 0.03);
    }

    private Retouch loss() {
        return new Retouch(
                0,
                shop.visit.id(),
                null,
                false,
                shop.finding,
                "the worn edge",
                ColourClass.INSTRUMENT,
                true,
                GROUND,
                ColourClass.UNCALIBRATED,
                false,
                TARGET,
                2,
                1.5,
                RetouchShop.NOW,
                "bench");
    }

    private long coat(long retouch, String remark) {
        return shop.coats.lay(
                shop.visit.id(),
                new CoatToLay(
                        retouch,
                        List.of(new CoatPart(yellow.id(), 0.25), new CoatPart(red.id(), 0.5)),
                        "yellow and red",
                        "thin shellac",
                        "alcohol",
                        remark,
                        RetouchShop.NOW,
                        "bench"),
                RetouchShop.NOW);
    }

    @Test
    void aColourKeepsItsDrawdownsToTheLastDigit() {
        List<PaletteFilm> films = shop.palette.films(yellow.id());
        assertThat(films).extracting(PaletteFilm::coats).containsExactly(0.5, 1.0, 0.5, 1.0);
        assertThat(films.get(0).film().values())
                .isEqualTo(RetouchShop.film(495, 20, 0.02, 0.5, 0.86).values());
        assertThat(shop.palette.get(yellow.id())).usingRecursiveComparison().isEqualTo(yellow);
        assertThat(shop.palette.listOf(List.of(red.id())))
                .usingRecursiveComparison()
                .isEqualTo(List.of(red));
        assertThatThrownBy(() -> shop.palette.get(77)).isInstanceOf(NotHere.class);
    }

    @Test
    void aLossComesBackWithItsColoursAndStaysWhenItIsTakenOut() {
        long id = shop.retouches.add(loss(), List.of(yellow.id(), red.id()));
        Retouch kept = shop.retouches.get(id);
        assertThat(kept.ground().values()).isEqualTo(GROUND.values());
        assertThat(kept.target().values()).isEqualTo(TARGET.values());
        assertThat(kept.targetClass()).isEqualTo(ColourClass.UNCALIBRATED);
        assertThat(kept.targetSpectral()).isFalse();
        assertThat(kept.filmCoats()).isEqualTo(1.5);
        assertThat(shop.retouches.colours(id)).containsExactly(yellow.id(), red.id());
        shop.retouches.withdraw(id, RetouchShop.NOW);
        assertThat(shop.retouches.listNow(shop.visit.id())).isEmpty();
        assertThat(shop.retouches.get(id)).usingRecursiveComparison().isEqualTo(kept);
        assertThat(shop.retouches.colours(id)).hasSize(2);
    }

    @Test
    void aCoatAndItsWordsInTheDiaryAreOneWriting() {
        long retouch = shop.retouches.add(loss(), List.of(yellow.id(), red.id()));
        long id = coat(retouch, "even");
        LaidCoat laid = shop.coats.list(retouch).get(0);
        assertThat(laid.id()).isEqualTo(id);
        assertThat(laid.coats()).isEqualTo(0.75);
        assertThat(laid.reading()).isEmpty();
        DiaryEntry told = shop.diary.get(laid.diaryId());
        assertThat(told.writing().material()).isEqualTo("yellow and red");
        assertThat(told.writing().reversibleWith()).isEqualTo("alcohol");
        assertThat(told.writing().remark()).isEqualTo("Over: thin shellac.\neven");
        int before = shop.diary.listNow(shop.visit.id()).size();
        assertThatThrownBy(() -> coat(retouch + 1, "to no loss")).isNotNull();
        assertThat(shop.diary.listNow(shop.visit.id())).hasSize(before);
    }

    @Test
    void theLatestReadingOfACoatHoldsAndTheEarlierStays() {
        long retouch = shop.retouches.add(loss(), List.of(yellow.id()));
        long id = coat(retouch, "");
        shop.coats.measured(id, new ColourReading(ColourClass.INSTRUMENT, true, GROUND), "bench", RetouchShop.NOW);
        shop.coats.measured(id, new ColourReading(ColourClass.ONE_PHOTOGRAPH, false, TARGET), "bench", RetouchShop.NOW);
        assertThat(shop.coats.list(retouch).get(0).reading())
                .get()
                .usingRecursiveComparison()
                .isEqualTo(new ColourReading(ColourClass.ONE_PHOTOGRAPH, false, TARGET));
        assertThat(count("retouch_reading")).isEqualTo(2);
    }

    @Test
    void aBatchItsCoatsAndAreasComeBack() {
        List<Ingredient> parts = List.of(
                new Ingredient("linseed oil", 100, 930, Part.OIL),
                new Ingredient("colophony", 100.5, 1070, Part.RESIN));
        long batch = shop.book.add(
                new Varnish(0, "batch 3", LocalDate.of(2026, 10, 1), "clear", false, RetouchShop.NOW, "bench"), parts);
        assertThat(shop.book.ingredients(batch)).isEqualTo(parts);
        shop.book.add(coatOf(batch));
        VarnishCoat kept = shop.book.coats(batch).get(0);
        assertThat(kept.touchDryH()).isEqualTo(23.5);
        shop.book.add(kept.withdrawnAt(RetouchShop.NOW));
        assertThat(shop.book.coats(batch)).isEmpty();
        assertThat(count("varnish_coat")).isEqualTo(2);
        shop.areas.add(new WornArea(
                0, shop.visit.id(), shop.finding, batch, null, false, 20.5, 2, 30, 40, RetouchShop.NOW, "bench"));
        WornArea area = shop.areas.listNow(shop.visit.id()).get(0);
        assertThat(area.areaCm2()).isEqualTo(20.5);
        shop.areas.add(area.withdrawnAt(RetouchShop.NOW));
        assertThat(shop.areas.listNow(shop.visit.id())).isEmpty();
        shop.book.put(batch, true);
        assertThat(shop.book.get(batch).putAway()).isTrue();
    }

    private static VarnishCoat coatOf(long batch) {
        return new VarnishCoat(
                0, batch, null, false, LocalDate.of(2026, 11, 1), 23.5, 20, 50, "", RetouchShop.NOW, "bench");
    }

    private int count(String table) {
        return shop.ledger.read(handle -> handle.createQuery("SELECT count(*) FROM " + table)
                .mapTo(Integer.class)
                .one());
    }

    @Test
    void theDatabaseKeepsHistory() {
        long retouch = shop.retouches.add(loss(), List.of(yellow.id()));
        long coat = coat(retouch, "");
        shop.coats.measured(coat, new ColourReading(ColourClass.INSTRUMENT, true, GROUND), "bench", RetouchShop.NOW);
        for (String table : new String[] {
            "retouch", "retouch_colour", "retouch_coat", "retouch_coat_part", "retouch_reading", "palette_film"
        }) {
            assertThatThrownBy(() -> shop.ledger.change(handle -> handle.execute("DELETE FROM " + table)))
                    .hasStackTraceContaining("history is kept");
        }
        assertThatThrownBy(() -> shop.ledger.change(handle -> handle.execute("UPDATE retouch SET place = 'x'")))
                .hasStackTraceContaining("history is kept: retouch");
        assertThatThrownBy(() -> shop.ledger.change(handle -> handle.execute("UPDATE palette_colour SET name = 'x'")))
                .hasStackTraceContaining("history is kept: palette_colour");
    }
}
