package afterlength.workshop.retouch;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The varnish book: a batch by mass, its scales by name, its own drying, and the coats for a worn area. */
class VarnishPageTest {
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

    /** 100 g of oil, 100 g of resin, 100 g of turpentine: 107.5 + 93.5 + 114.9 mL, as reckoned by hand. */
    private OpenedDesk.Answer batch() {
        return desk.postAndFollow(
                "/shelf/varnish/new",
                "name",
                "oil varnish 3",
                "hand",
                "bench",
                "ingredients/0/name",
                "linseed oil",
                "ingredients/0/mass_g",
                "100",
                "ingredients/0/density_kg_m3",
                "930",
                "ingredients/0/part",
                "OIL",
                "ingredients/1/name",
                "colophony",
                "ingredients/1/mass_g",
                "100",
                "ingredients/1/density_kg_m3",
                "1070",
                "ingredients/1/part",
                "RESIN",
                "ingredients/2/name",
                "turpentine",
                "ingredients/2/mass_g",
                "100,0",
                "ingredients/2/density_kg_m3",
                "870",
                "ingredients/2/part",
                "SOLVENT");
    }

    @Test
    void theScalesStandWithTheirNames() {
        OpenedDesk.Answer page = batch();
        assertThat(page.words("main"))
                .contains(
                        "63.6 % of its volume stays in the film (66.7 % of its mass); the batch is 315.9 mL, 300.0 g.",
                        "1.00 of oil to 1 of resin by mass: medium on the scale of old books (lean, medium, fat).",
                        "50 % oil of oil and resin: medium on the scale of alkyds",
                        "12.9 US gallons of oil to 100 lb of resin: short on the scale of American varnish makers");
        assertThat(page.words(".caution")).contains("Rags with drying oil", "Solvent vapour", "Ultraviolet");
    }

    @Test
    void threeCoatsMakeAnEstimateAndFewerDoNot() {
        assertThat(batch().words(".answer"))
                .isEqualTo(
                        "Too few coats yet: none is recorded, 3 are needed. Until then common practice holds: 24 to 72 h, usually 60 h,"
                                + " for a thin oil coat.");
        for (String hours : new String[] {"20", "26", "23,5"}) {
            desk.post(
                    "/shelf/varnish/1/coats",
                    "laid_on",
                    "2026-11-01",
                    "touch_dry_h",
                    hours,
                    "temperature_C",
                    "20",
                    "humidity_pct",
                    "50",
                    "hand",
                    "bench");
        }
        assertThat(desk.get("/shelf/varnish/1").words(".answer"))
                .isEqualTo("Dry to the touch after 24 h, all of them after 20 h to 26 h, from 3 coats of this batch.");
        desk.post("/shelf/varnish/1/coats/2/withdraw");
        assertThat(shop.book.coats(1)).hasSize(2);
    }

    /** The air is that of the drying: the logger's mean from the laying on, for each coat, and up to now for the one to come. */
    @Test
    void theAirIsTheLoggersOverTheDryingTime() {
        List<String> asked = new ArrayList<>();
        desk.close();
        shop.air = (from, to) -> {
            asked.add(from + " " + to);
            return Optional.of(new DryingAir.Mean(18 + asked.size() / 10.0, 45));
        };
        desk = shop.open();
        batch();
        asked.clear();
        for (String hours : new String[] {"20", "26", "23,5"}) {
            desk.post(
                    "/shelf/varnish/1/coats",
                    "laid_on",
                    "2026-11-01",
                    "laid_at",
                    "14:00",
                    "touch_dry_h",
                    hours,
                    "hand",
                    "bench");
        }
        assertThat(asked)
                .containsExactly(
                        "2026-11-01T14:00:00Z 2026-11-02T10:00:00Z",
                        "2026-11-01T14:00:00Z 2026-11-02T16:00:00Z",
                        "2026-11-01T14:00:00Z 2026-11-02T13:30:00Z");
        assertThat(shop.book.coats(1)).extracting(VarnishCoat::temperatureC).containsExactly(18.1, 18.2, 18.3);
        assertThat(desk.get("/shelf/varnish/1").words(".answer"))
                .endsWith(
                        "Over such a time the air of the shop was 18.4 °C and 45 % lately. The air is outside what these"
                                + " coats had, and no correction for that is known.");
        assertThat(asked.get(3)).isEqualTo("2026-11-03T13:45:00Z 2026-11-04T13:15:00Z");
    }

    @Test
    void airThatNobodyReadIsAskedFor() {
        batch();
        OpenedDesk.Answer page = desk.post(
                "/shelf/varnish/1/coats",
                "laid_on",
                "2026-11-01",
                "laid_at",
                "noon",
                "touch_dry_h",
                "20",
                "hand",
                "bench");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words("#problem-temperature_C")).contains("The temperature of the air is “”");
        assertThat(page.words("#problem-laid_at")).isEqualTo("The time it was laid is “noon”; write it such as 14:30.");
    }

    @Test
    void aWornAreaOfAFindingTakesCoatsAndMillilitres() {
        batch();
        String address = "/visits/" + shop.visit.id() + "/worn-areas";
        OpenedDesk.Answer page = desk.postAndFollow(
                address,
                "finding",
                "" + shop.finding,
                "varnish",
                "1",
                "area_cm2",
                "20",
                "plus_minus_cm2",
                "2",
                "dry_um",
                "30",
                "wet_coat_um",
                "30",
                "hand",
                "bench");
        assertThat(page.words(".answer"))
                .isEqualTo(
                        "2 coats of at most 30 µm wet for 30 µm dry; 0.094 ± 0.009 mL in all, the ± from the area alone.");
        OpenedDesk.Answer refused = desk.post(
                address, "area_cm2", "0", "plus_minus_cm2", "1", "dry_um", "30", "wet_coat_um", "30", "hand", "bench");
        assertThat(refused.lines(".problems li"))
                .containsExactly(
                        "The finding is not chosen; choose one of the list.",
                        "The batch is not chosen; choose one of the list.",
                        "The worn area is 0; allowed is 0.01 to 20000 cm².");
    }

    @Test
    void aBatchThatCannotBeCountedIsNotKept() {
        OpenedDesk.Answer refused = desk.post(
                "/shelf/varnish/new",
                "name",
                "x",
                "hand",
                "bench",
                "ingredients/0/name",
                "oil",
                "ingredients/0/mass_g",
                "0",
                "ingredients/0/density_kg_m3",
                "930",
                "ingredients/0/part",
                "OIL");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .containsExactly("The mass of oil is 0 g; it must be more than 0 and at most 100000 g.");
        assertThat(shop.book.list()).isEmpty();
    }
}
