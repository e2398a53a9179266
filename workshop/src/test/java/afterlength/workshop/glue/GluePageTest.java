package afterlength.workshop.glue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.air.AirRecord;
import afterlength.workshop.climate.AirFile;
import afterlength.workshop.climate.ClimateStore;
import afterlength.workshop.desk.Cautions;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.work.BenchAhead;
import afterlength.workshop.work.ComingChecks;
import afterlength.workshop.work.WorkRoom;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GluePageTest {
    private static final Instant NOW = Instant.parse("2026-11-04T08:00:00Z");

    @TempDir
    Path folder;

    private final Hand clock = new Hand();
    private Ledger ledger;
    private GlueStore glue;
    private ClimateStore climate;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        ledger = Ledger.open(ShopFolder.open(folder));
        SettingsStore settings = new SettingsStore(ledger);
        Frames frames = new Frames(settings);
        VisitStore visits = new VisitStore(ledger);
        InstrumentStore instruments = new InstrumentStore(ledger);
        glue = new GlueStore(ledger);
        climate = new ClimateStore(ledger);
        desk = OpenedDesk.with(
                new GluePages(frames, settings, visits, instruments, climate, glue, clock),
                new WorkRoom(
                        frames,
                        ledger,
                        settings,
                        instruments,
                        visits,
                        List.of(new PotTimers(glue)),
                        BenchAhead.UNPLANNED,
                        ComingChecks.NONE,
                        clock));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    /** 60 g at 1 : 1.8: 21.43 g dry glue, 38.57 g water, 31.43 % true solids. */
    @Test
    void aBatchIsWeighedAndSoaks() {
        OpenedDesk.Answer pot = make("total_g", "60", "water", "1,8");
        assertThat(pot.words(".answer")).isEqualTo("It soaks until " + clockOf(NOW.plus(Duration.ofHours(2))) + ".");
        assertThat(pot.words(".reason"))
                .startsWith(
                        "21.4 g dry glue in 38.6 g water (1 : 1.8 by mass), 31.4 % true solids at 12 % moisture of the dry glue; "
                                + "192 g by the glue test, 12.5 % gel, grade 8 of 18.");
        assertThat(pot.words(".caution")).contains(Cautions.HOT_GLUE.text());
    }

    @Test
    void todayCountsSoakingWarmingAndTheWorkingDayOfThePot() {
        make("total_g", "60", "water", "2");
        assertThat(desk.get("/").words(".drying"))
                .contains("hot hide glue soaks")
                .contains("Then: Soaked: warm it.");
        assertThat(desk.get("/").page().select("[data-left]").attr("data-left")).isEqualTo("7200");
        clock.pass(Duration.ofHours(2));
        happen("WARMING", "");
        assertThat(desk.get("/").page().select("[data-left]").attr("data-left")).isEqualTo("1800");
        assertThat(desk.get("/").words(".drying")).contains(Cautions.HOT_GLUE.text());
        clock.pass(Duration.ofMinutes(30));
        happen("HOT", "60");
        assertThat(desk.get("/").words(".drying"))
                .contains("hot hide glue is in use")
                .contains("Then: Its working day is over: make fresh.");
        clock.pass(Duration.ofHours(5));
        happen("COLD", "");
        clock.pass(Duration.ofDays(1));
        happen("WARMING", "");
        happen("HOT", "60");
        // five of eight hot hours are spent
        assertThat(desk.get("/").page().select("[data-left]").attr("data-left")).isEqualTo(Integer.toString(3 * 3600));
        clock.pass(Duration.ofHours(4));
        assertThat(desk.get("/shelf/glue").words(".answer"))
                .isEqualTo("Its working day is over: throw it away and make fresh.");
        happen("ENDED", "");
        assertThat(desk.get("/").page().select("[data-left]")).isEmpty();
    }

    @Test
    void aPotThatIsTooHotIsRefusedAndAHotOneWarnedOf() {
        make("total_g", "60", "water", "2");
        OpenedDesk.Answer refused = desk.post("/shelf/glue/1/events", "what", "HOT", "pot_C", "66");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .containsExactly(
                        "The pot reads 66 °C; above 65.6 °C hide glue breaks down. Take it off the heat, let it cool to about "
                                + "60 °C and read again.");
        happen("HOT", "64");
        assertThat(desk.get("/shelf/glue/1").lines(".caution").get(0))
                .isEqualTo(
                        "The pot was at 64 °C; above 63 °C glue loses strength the longer it stands. Let it cool to about 60 °C.");
    }

    @Test
    void aGluingRemembersTheAirOfItsMomentAndUsesUpThePot() {
        climate.add(
                new AirFile(
                        0,
                        "a",
                        "f".repeat(64),
                        "bench",
                        1,
                        1,
                        NOW.getEpochSecond(),
                        NOW.getEpochSecond(),
                        "",
                        "",
                        false,
                        "h",
                        NOW),
                AirRecord.of(new long[] {NOW.getEpochSecond()}, new float[] {20.5f}, new float[] {47}));
        make("total_g", "60", "water", "2");
        desk.post("/shelf/glue/1/gluings", "joint", "lower seam", "used_g", "2,5", "part_C", "24", "clamp_h", "12");
        Gluing kept = glue.get(1).gluings().get(0);
        assertThat(kept.temperatureC()).isEqualTo(20.5);
        assertThat(kept.humidityPct()).isEqualTo(47);
        assertThat(kept.airFrom()).isEqualTo(AirFrom.LOGGER);
        assertThat(glue.get(1).left_g()).isEqualTo(57.5);
        assertThat(desk.get("/shelf/glue/1").words(".hands .step"))
                .isEqualTo("lower seam, 2.5 g, parts at 24 °C, in air of 20.5 °C, 47 % RH from the logger");
        assertThat(desk.get("/").words(".drying")).contains("clamped: lower seam");
        desk.post("/shelf/glue/1/gluings", "joint", "cleat", "temperature_C", "18", "humidity_pct", "40");
        assertThat(glue.get(1).gluings().get(1).airFrom()).isEqualTo(AirFrom.TYPED);
        clock.pass(Duration.ofHours(3));
        desk.post("/shelf/glue/1/gluings", "joint", "bar");
        assertThat(glue.get(1).gluings().get(2).airFrom()).isEqualTo(AirFrom.NONE);
    }

    @Test
    void aGluingIsTakenOutAndBack() {
        make("total_g", "60", "water", "2");
        desk.post("/shelf/glue/1/gluings", "joint", "lower seam", "used_g", "2");
        OpenedDesk.Answer out = desk.postAndFollow("/shelf/glue/gluings/1/take-out");
        assertThat(out.words(".undo")).startsWith("Taken out: lower seam.");
        assertThat(glue.get(1).gluings()).isEmpty();
        desk.post(out.page().select(".undo").attr("action"));
        assertThat(glue.get(1).gluings()).extracting(Gluing::joint).containsExactly("lower seam");
    }

    @Test
    void everyProblemOfABatchIsListedAndTypedTextStays() {
        OpenedDesk.Answer refused =
                desk.post("/shelf/glue/new", "name", "", "water", "x", "moisture_pct", "12", "form", "");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .containsExactly(
                        "The name is empty. Write a few words.",
                        "The water for one part of glue is “x”, which is not a number. Allowed is 0.5 to 10 parts, such as 12.5 or "
                                + "12,5.",
                        "The scale of the gram strength is not chosen; choose one of: glue, gelatine.",
                        "Neither mass nor joints are given. Write the mass of the batch, or the area of the joints.",
                        "The form is not chosen; choose flakes or ground.");
        assertThat(refused.page().select("#f-water").val()).isEqualTo("x");
    }

    /** 40 cm² with 0.2 mm on both faces of a 1 : 2 glue, three times: 40·0.02·2·1.0748·3 = 5.16 g. */
    @Test
    void theMassFollowsFromTheJoints() {
        make("joints_cm2", "40", "water", "2");
        assertThat(glue.get(1).batch().dryG() + glue.get(1).batch().waterG()).isCloseTo(5.16, within(0.005));
    }

    @Test
    void theWindowIsDrawnWithItsBandAndItsCautions() {
        OpenedDesk.Answer page = desk.get("/shelf/glue/window");
        assertThat(page.words(".answer")).startsWith("About ").contains("until the film gels, ");
        assertThat(page.words(".live > .reason")).contains("Reckoned with film and plate together");
        assertThat(page.page().select("svg desc").text()).startsWith("From 60 °C on parts at 20 °C: About ");
        assertThat(page.page().select("svg .band")).isNotEmpty();
        assertThat(page.page().select("tbody tr")).hasSize(5);
        assertThat(page.words(".caution")).contains(Cautions.HOT_GLUE.text());
        assertThat(page.lines(".caveat"))
                .anyMatch(text -> text.startsWith("Low and high hold a gel point 3 °C higher and lower"));
        assertThat(desk.get("/shelf/glue/window?glue_C=70&wood_C=20").lines(".problems li"))
                .contains("The glue is 70; allowed is 20 to 65.6 °C.");
    }

    @Test
    void glueIsHistory() {
        make("total_g", "60", "water", "2");
        desk.post("/shelf/glue/1/gluings", "joint", "seam");
        for (String table : List.of("glue_batch", "glue_event", "gluing")) {
            assertThatThrownBy(() -> ledger.change(handle -> handle.execute("DELETE FROM " + table)))
                    .hasMessageContaining("history is kept: " + table);
            assertThatThrownBy(() -> ledger.change(handle -> handle.execute("UPDATE " + table + " SET hand = 'x'")))
                    .hasMessageContaining("history is kept: " + table);
        }
    }

    private OpenedDesk.Answer make(String... mass) {
        return desk.postAndFollow(
                "/shelf/glue/new",
                "name",
                "hot hide glue",
                "strength_g",
                "192",
                "bloom_scale",
                "GLUE",
                "form",
                "GROUND",
                "moisture_pct",
                "12",
                "film_mm",
                "0.2",
                mass[0],
                mass[1],
                mass[2],
                mass[3]);
    }

    private void happen(String what, String pot_C) {
        desk.post("/shelf/glue/1/events", "what", what, "pot_C", pot_C);
    }

    private static String clockOf(Instant at) {
        return Days.clock(at);
    }

    /** A clock that moves only when told. */
    private static final class Hand extends Clock {
        private Instant now = NOW;

        void pass(Duration time) {
            now = now.plus(time);
        }

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException("this clock stays in its zone");
        }
    }
}
