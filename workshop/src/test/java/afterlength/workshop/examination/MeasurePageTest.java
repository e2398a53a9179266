package afterlength.workshop.examination;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.desk.OpenedDesk.Answer;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MeasurePageTest {
    private static final String PAGE = "/visits/1/measures";

    @TempDir
    Path root;

    private ExaminedShop shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new ExaminedShop(root);
        desk = OpenedDesk.with(shop.rooms());
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private Answer write(String path, String moment, String quantity, String value, String unit, String plusMinus) {
        return desk.postAndFollow(
                path,
                "moment",
                moment,
                "quantity",
                quantity,
                "value",
                value,
                "unit",
                unit,
                "plus_minus",
                plusMinus,
                "method",
                "steel rule",
                "temperature_c",
                "20",
                "humidity_pct",
                "45",
                "hand",
                "M. Muster");
    }

    @Test
    void aMeasureIsShownWithItsErrorMethodAirAndMoisture() {
        Answer page = write(PAGE, "BEFORE", "Projection", "29,8", "", "0,2");
        assertThat(page.words(".answer")).isEqualTo("One measure.");
        assertThat(page.words(".measures tbody td.number")).isEqualTo("29.8 ± 0.2 mm");
        assertThat(page.words(".measures tbody td:last-child"))
                .startsWith("steel rule 20 °C, 45 % RH; wood settles at 8.5 ± 0.5 % · M. Muster, 2 Mar 2026, 09:15");
        assertThat(page.words(".caveat")).isEqualTo(Air.CAVEAT);
        assertThat(shop.measures.findNow(1, Quantity.PROJECTION, Moment.BEFORE)).isPresent();
    }

    @Test
    void theAirTypedLastTodayIsThereForTheNextMeasure() {
        Answer page = write(PAGE, "AFTER", "projection", "29.8", "mm", "0.2");
        assertThat(page.page().select("[name=temperature_c]").val()).isEqualTo("20");
        assertThat(page.page().select("[name=humidity_pct]").val()).isEqualTo("45");
        assertThat(page.page().select("[name=moment][checked]").val()).isEqualTo("AFTER");
        assertThat(page.page().select("[name=hand]").val()).isEqualTo("M. Muster");
        assertThat(page.words("#moisture")).isEqualTo("Wood settles at 8.5 ± 0.5 % moisture in this air.");
    }

    @Test
    void allProblemsStandBesideTheirFields() {
        Answer page = desk.post(
                PAGE,
                "moment",
                "BEFORE",
                "quantity",
                "projection",
                "value",
                "2,98",
                "unit",
                "cm",
                "plus_minus",
                "",
                "method",
                "",
                "humidity_pct",
                "104",
                "hand",
                "M. Muster");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.lines(".problem"))
                .containsExactlyInAnyOrder(
                        "The value of projection is 2,98; allowed is 3 to 250 mm.",
                        "The value has no ±. Write how far it may be off, in the same unit: about 0.5 mm for a rule by eye, "
                                + "0.1 mm for a calliper on wood; measure twice and see.",
                        "The unit of projection is “cm”; it is kept in mm so that it can be compared and reckoned with. "
                                + "Convert the value and its ±.",
                        "The method is empty. Write a few words.",
                        "The humidity of the air is 104; allowed is 0 to 100 %.");
        assertThat(page.page().select("[name=value]").val()).isEqualTo("2,98");
        assertThat(shop.measures.listNow(1)).isEmpty();
    }

    @Test
    void anErrorOfNothingIsNotBelieved() {
        Answer page = write(PAGE, "BEFORE", "own words", "12", "Hz", "0");
        assertThat(page.words("#problem-plus_minus")).isEqualTo("The ± is 0; allowed is 0.001 to 100000.");
    }

    @Test
    void beforeAndAfterStandBesideEachOther() {
        write(PAGE, "BEFORE", "tap tone", "172", "Hz", "3");
        Answer page = write(PAGE, "AFTER", "Tap tone", "180", "Hz", "4");
        assertThat(page.words(".answer")).isEqualTo("Two measures; one quantity before and after work.");
        assertThat(page.lines("table:not(.measures) tbody tr"))
                .containsExactly("tap tone 172.0 ± 3.0 Hz 180.0 ± 4.0 Hz 8.0 ± 5.0 Hz more");
    }

    @Test
    void aCorrectionShowsTheEarlierWordingAndAWithdrawalCanBeUndone() {
        write(PAGE, "BEFORE", "projection", "39.8", "mm", "0.2");
        Answer corrected = write("/measures/1/correct", "BEFORE", "projection", "29.8", "mm", "0.2");
        assertThat(corrected.words(".earlier li")).startsWith("projection, before work: 39.8 ± 0.2 mm; steel rule;");
        Answer withdrawn = desk.postAndFollow("/measures/2/withdraw");
        assertThat(withdrawn.words(".undo p")).isEqualTo("Withdrawn: projection, 29.8 ± 0.2 mm. It is kept.");
        Answer undone = desk.postAndFollow(withdrawn.page().select(".undo").attr("action"));
        assertThat(undone.words(".measures tbody td.number")).isEqualTo("29.8 ± 0.2 mm");
    }

    @Test
    void theMoistureIsToldWhileTheAirIsTyped() {
        assertThat(desk.get("/air/moisture?temperature_c=20&humidity_pct=45").words())
                .isEqualTo("Wood settles at 8.5 ± 0.5 % moisture in this air.");
        assertThat(desk.get("/air/moisture?temperature_c=20&humidity_pct=45x").words())
                .isEqualTo(
                        "The humidity of the air is “45x”, which is not a number. Allowed is 0 to 100 %, such as 12.5 or 12,5.");
    }
}
