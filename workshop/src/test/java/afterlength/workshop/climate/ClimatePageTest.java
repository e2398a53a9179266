package afterlength.workshop.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.OpenedDesk;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClimatePageTest {
    @TempDir
    Path folder;

    private AirShop shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new AirShop(folder);
        desk = shop.open();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void anEmptyShopAsksForAFile() {
        OpenedDesk.Answer page = desk.get("/shelf/climate");
        assertThat(page.words(".answer")).startsWith("No logger has told of the air yet.");
        assertThat(page.page().select("svg")).isEmpty();
        assertThat(desk.post("/shelf/climate/files").lines(".problems li"))
                .containsExactly("No file was chosen. Choose the file that the logger's program exported.");
    }

    @Test
    void theLayoutIsShownAndTheOrderOfDayAndMonthIsNotGuessed() throws IOException {
        String file = shop.bring("Date;Temp;RH\n03/04/2026 10:00;20,5;45\n");
        OpenedDesk.Answer page = desk.get("/shelf/climate/layout?file=" + file + "&name=air.csv");
        assertThat(page.words("pre")).contains("03/04/2026 10:00;20,5;45");
        assertThat(page.page().select("input[name=separator][checked]").val()).isEqualTo(";");
        assertThat(page.page().select("input[name=decimal_sign][checked]").val())
                .isEqualTo(",");
        assertThat(page.page().select("#f-temperature_column").val()).isEqualTo("2");
        assertThat(page.page().select("input[name=day_order][checked]")).isEmpty();
        OpenedDesk.Answer refused = desk.post("/shelf/climate/layout", "file", file, "place", "", "do", "take");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .contains(
                        "The place is empty. Write a few words.",
                        "The order of day and month is not chosen; choose one of: year first, day first, month first.",
                        "The logger's clock is not chosen; say whether it follows summer time.",
                        "The column of the time is empty. Count from the left, beginning with 1.");
    }

    @Test
    void aTrialWritesNothingAndListsWhatIsNotCounted() throws IOException {
        String file = shop.bring("time,temp,RH\n2026-11-01 10:00,20,45\n2026-11-01 11:00,99,45\nend\n");
        OpenedDesk.Answer tried = desk.post("/shelf/climate/layout", layout(file, "try"));
        assertThat(tried.words(".answer"))
                .isEqualTo("1 readings from 1 Nov 2026, 10:00 to 1 Nov 2026, 10:00; 2 rows are not counted.");
        assertThat(tried.lines(".faults li"))
                .containsExactly(
                        "Line 3 has a temperature outside −50 to 80 °C: 2026-11-01 11:00,99,45",
                        "Line 4 has fewer columns than the layout names: end");
        assertThat(shop.climate.list()).isEmpty();
    }

    @Test
    void aFileIsTakenInDrawnPutAwayAndTakenBack() throws IOException {
        String file = shop.bring(AirShop.hourly(AirShop.NOW, 100, 47) + "end\n");
        OpenedDesk.Answer climate = desk.postAndFollow("/shelf/climate/layout", layout(file, "take"));
        assertThat(climate.words(".answer"))
                .isEqualTo("A bare belly of 2.5 mm held about 8.8 ± 0.5 % moisture at the last reading, "
                        + Days.words(AirShop.NOW)
                        + "; no change in this record is large enough to matter by itself.");
        assertThat(climate.page().select("svg desc").text())
                .isEqualTo("Relative humidity from 47 to 47 %, mean 47 %; steps of plate moisture that matter: 0");
        assertThat(climate.lines(".caveat"))
                .contains("The moisture curve is uncertain by about ±0.5 % moisture content.");
        AirFile kept = shop.climate.list().get(0);
        assertThat(kept.readings()).isEqualTo(101);
        assertThat(desk.get("/shelf/climate/files/" + kept.id()).lines(".faults li"))
                .containsExactly("Line 103 has fewer columns than the layout names: end");
        assertThat(desk.post("/shelf/climate/layout", layout(file, "take")).lines(".problems li"))
                .containsExactly(
                        "This very file stands in the record of bench already. Put that away first to read it anew.");
        desk.post("/shelf/climate/files/" + kept.id() + "/put-away");
        assertThat(desk.get("/shelf/climate").page().select("svg")).isEmpty();
        desk.post("/shelf/climate/files/" + kept.id() + "/take-back");
        assertThat(desk.get("/shelf/climate").page().select("svg")).hasSize(1);
    }

    @Test
    void theAirOfAMomentIsTheNearestWithinAnHour() throws IOException {
        desk.post("/shelf/climate/layout", layout(shop.bring(AirShop.hourly(AirShop.NOW, 5, 47)), "take"));
        assertThat(shop.climate.findNear(AirShop.NOW.plusSeconds(600)).orElseThrow())
                .isEqualTo(new LoggedAir(AirShop.NOW, "bench", 20, 47));
        assertThat(shop.climate.findNear(AirShop.NOW.plus(Duration.ofMinutes(61))))
                .isEmpty();
    }

    @Test
    void whereFilesOverlapTheNewerHolds() throws IOException {
        desk.post("/shelf/climate/layout", layout(shop.bring(AirShop.hourly(AirShop.NOW, 5, 47)), "take"));
        desk.post("/shelf/climate/layout", layout(shop.bring(AirShop.hourly(AirShop.NOW, 2, 52)), "take"));
        var record = shop.climate.record("bench", AirShop.NOW.minus(Duration.ofDays(9)));
        assertThat(record.size()).isEqualTo(6);
        assertThat(record.humidity_pct(0)).isEqualTo(47);
        assertThat(record.humidity_pct(5)).isEqualTo(52);
    }

    @Test
    void readingsCanNeitherBeChangedNorRemoved() throws IOException {
        desk.post("/shelf/climate/layout", layout(shop.bring(AirShop.hourly(AirShop.NOW, 5, 47)), "take"));
        for (String change : List.of("UPDATE air_reading SET humidity_pct = 1", "DELETE FROM air_reading")) {
            assertThatThrownBy(() -> shop.ledger.change(handle -> handle.execute(change)))
                    .hasMessageContaining("history is kept: air_reading");
        }
    }

    /** The question of the bench, with its band, its caveats and what stands beside every yes. */
    @Test
    void willThisCrackCloseByItself() {
        OpenedDesk.Answer page = desk.get("/shelf/climate/wood");
        assertThat(page.words(".answer"))
                .isEqualTo(
                        "Perhaps: the edges come together by 0.08 to 1.08 mm, and nobody knows how much of that reaches the crack.");
        assertThat(page.words(".caution")).contains("What the air closes, the air opens again.");
        assertThat(page.lines(".caveat")).hasSizeGreaterThan(4);
        OpenedDesk.Answer outside = desk.get("/shelf/climate/wood?from_pct=2&to_pct=50&temperature_C=20");
        assertThat(outside.status()).isEqualTo(422);
        assertThat(outside.lines(".problems li")).contains("The humidity before is 2; allowed is 5 to 90 %.");
    }

    @Test
    void aFileThatIsNotThereIsNotFound() {
        assertThat(desk.get("/shelf/climate/layout?file=../shop.db").status()).isEqualTo(404);
        assertThat(desk.get("/shelf/climate/files/9").status()).isEqualTo(404);
    }

    private static String[] layout(String file, String act) {
        List<String> fields = new ArrayList<>(List.of(
                "file",
                file,
                "file_name",
                "air.csv",
                "place",
                "bench",
                "clock",
                "FIXED",
                "header_lines",
                "1",
                "separator",
                ","));
        fields.addAll(List.of("decimal_sign", ".", "time_column", "1", "date_column", "", "temperature_column", "2"));
        fields.addAll(List.of("humidity_column", "3", "day_order", "YEAR_FIRST", "temperature_unit", "CELSIUS"));
        fields.addAll(List.of("humidity_unit", "PER_CENT", "do", act));
        return fields.toArray(String[]::new);
    }
}
