package afterlength.workshop.work;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.ledger.Settings;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShelfPageTest {
    @TempDir
    Path folder;

    private Shop shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new Shop(folder);
        desk = shop.open();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void settingsAreKeptAndShown() {
        OpenedDesk.Answer shelf = desk.postAndFollow(
                "/shelf/settings",
                "shop_name",
                "Bench by the river",
                "address",
                "Mill Lane 3",
                "hands",
                " Ada \n\nBruno\nAda",
                "currency",
                "EUR",
                "per_hour",
                "84,50",
                "tax",
                "5,5",
                "paper",
                "LETTER",
                "closes_at",
                "17:30");
        assertThat(shop.settings.get())
                .isEqualTo(new Settings(
                        "Bench by the river",
                        "Mill Lane 3",
                        List.of("Ada", "Bruno"),
                        "EUR",
                        new Money(8450),
                        55,
                        true,
                        LocalTime.of(17, 30),
                        false));
        assertThat(shelf.words(".facts"))
                .isEqualTo(
                        "Name Bench by the river Address Mill Lane 3 Hands Ada, Bruno Price EUR 84.50 an hour, before 5.5 % tax"
                                + " Closes at 17:30 Paper US Letter");
    }

    @Test
    void settingsWithProblemsAreNotKeptAndEveryProblemIsListed() {
        OpenedDesk.Answer refused = desk.post(
                "/shelf/settings",
                "shop_name",
                "",
                "hands",
                "\n",
                "currency",
                "Euro",
                "per_hour",
                "80.123",
                "tax",
                "5.55",
                "paper",
                "A4",
                "closes_at",
                "late");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li"))
                .containsExactly(
                        "The shop's name is empty. Write a few words.",
                        "The price per hour is “80.123”; allowed is an amount with at most two decimals, such as 1200 or 1200,50.",
                        "No hand is named. Write at least one name, one on a line.",
                        "The currency is “Euro”; allowed are three capital letters, such as EUR, CHF or GBP.",
                        "The tax is 5.55 %; at most one decimal is kept, such as 5.5.",
                        "Closing time is “late”, which is no time. Write hours and minutes, such as 18:00.");
        assertThat(refused.page().select("#f-tax").val()).isEqualTo("5.55");
        assertThat(shop.settings.get()).isEqualTo(Settings.FRESH);
    }

    @Test
    void aMaterialIsAddedChangedPutAwayAndTakenBack() {
        desk.post("/shelf/materials/new", "name", "Hide glue", "kind", "glue", "batch", "7");
        Material kept = shop.materials.list().get(0);
        String address = "/shelf/materials/" + kept.id();
        assertThat(desk.get("/shelf").words("tbody tr")).isEqualTo("Hide glue glue 7 not written yet change put away");
        desk.post(
                address, "name", "Hide glue", "kind", "glue", "batch", "8", "reversible_with", "water", "version", "1");
        assertThat(desk.get("/shelf").words("tbody tr")).isEqualTo("Hide glue glue 8 water change put away");
        OpenedDesk.Answer away = desk.postAndFollow(address + "/put-away");
        assertThat(away.words(".notice"))
                .isEqualTo("Put away: Hide glue, batch 8. What the diary says of it stays. Take it back");
        assertThat(away.words("summary")).isEqualTo("One material is put away");
        desk.post(away.page().select(".notice form").attr("action"));
        assertThat(shop.materials.list()).hasSize(1);
    }

    @Test
    void aMaterialNeedsAName() {
        OpenedDesk.Answer refused = desk.post("/shelf/materials/new", "name", " ", "remark", "kept");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.lines(".problems li")).containsExactly("The material's name is empty. Write a few words.");
        assertThat(refused.page().select("#f-remark").text()).isEqualTo("kept");
    }

    @Test
    void practiceTimesCarryTheirMarks() {
        OpenedDesk.Answer times = desk.get("/shelf/times");
        assertThat(times.lines("tbody tr"))
                .contains(
                        "warm, glue, clamp about 15 min (10 – 30 min) 16 h (4 – 24 h) read: trade page (wait); hands-on common practice change",
                        "fit soundpost about 35 min (20 min – 1 h) common practice change");
        assertThat(times.lines("tbody tr")).noneMatch(line -> line.contains("COMMON") || line.contains("READ"));
        assertThat(times.page().select("a[href=/sources#shop-times]").text()).isEqualTo("Where the times come from");
    }

    @Test
    void theShopsOwnTimeCountsForWhatIsAgreedLater() {
        OpenedDesk.Answer wrong =
                desk.post("/shelf/times/post/1", "hands_low", "50", "hands_typical", "45", "wait_typical", "soon");
        assertThat(wrong.status()).isEqualTo(422);
        assertThat(wrong.page().select("[name=wait_typical]").val()).isEqualTo("soon");
        desk.post(
                "/shelf/times/post/1",
                "hands_low",
                "40",
                "hands_typical",
                "45",
                "hands_high",
                "90",
                "wait_low",
                "0",
                "wait_typical",
                "1,5",
                "wait_high",
                "2");
        assertThat(desk.get("/shelf/times").lines("tbody tr"))
                .contains("fit soundpost about 45 min (40 min – 1 h 30) 1.5 h (up to 2 h) the shop's own change");
        Step step = shop.step(shop.inWork("Viola", null, "post"), "fit soundpost");
        assertThat(step.waitTypicalH()).isEqualTo(1.5);
        desk.post("/shelf/times/post/1/take-back");
        assertThat(desk.get("/shelf/times").lines("tbody tr"))
                .contains("fit soundpost about 35 min (20 min – 1 h) common practice change");
        assertThat(shop.step(shop.inWork("Violin", null, "post"), "fit soundpost")
                        .waitTypicalH())
                .isZero();
    }
}
