package afterlength.workshop.agreement;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.OpenedDesk;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TreatmentPageTest {
    @TempDir
    Path folder;

    private OldViola shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new OldViola(folder);
        desk = shop.open();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static String[] form(String low, String high, String material, int version) {
        return new String[] {
            "title",
            "Glue two seams",
            "reason",
            "Both buzz.",
            "if_left",
            "They grow.",
            "undoing",
            "YES",
            "reversibility",
            "With water and warmth.",
            "materials",
            "hot hide glue",
            "tier",
            "SOUND",
            "minutes_low",
            low,
            "minutes_high",
            high,
            "material",
            material,
            "version",
            Integer.toString(version)
        };
    }

    @Test
    void aLineIsOpenedWithItsWordsItsFindingsAndWhereItsMinutesComeFrom() {
        Treatment line = shop.propose("seam", shop.seam);
        OpenedDesk.Answer page = desk.get("/treatments/" + line.id() + "/edit");
        assertThat(page.words(".caution"))
                .isEqualTo("Glue pot and warm water burn skin: handle them with care and keep water off the varnish."
                        + " No string tension until the glue has dried; clamps are set by feel, not by force.");
        assertThat(page.page().select("input[name=finding][checked]").eachAttr("value"))
                .containsExactly(Long.toString(shop.seam));
        assertThat(page.page().select("#f-minutes_high").val()).isEqualTo("70");
        assertThat(page.lines("table tr").get(2))
                .isEqualTo("warm, glue, clamp 10 min 15 min 30 min read trade page (wait); hands-on common practice");
        assertThat(page.words()).contains("The usual minutes count one seam of up to about a hand’s length.");
    }

    @Test
    void aChangedLineIsKeptWithBothDecimalSignsRead() {
        Treatment line = shop.propose("seam", shop.seam);
        OpenedDesk.Answer page =
                desk.postAndFollow("/treatments/" + line.id() + "/edit", form("40", "140", "12,50", 1));
        assertThat(page.lines(".proposal .title")).containsExactly("Glue two seams");
        Treatment kept = shop.treatments.get(line.id());
        assertThat(kept.materialMinor()).isEqualTo(new Money(1250));
        assertThat(kept.tier()).isEqualTo(Tier.SOUND);
        assertThat(kept.template()).isEqualTo("seam");
        assertThat(shop.treatments.listAnswers(1)).isEmpty();
    }

    @Test
    void everyProblemIsListedBesideItsFieldAndWhatWasTypedIsKept() {
        Treatment line = shop.propose("seam", shop.seam);
        OpenedDesk.Answer page = desk.post(
                "/treatments/" + line.id() + "/edit",
                "title",
                " ",
                "reason",
                "",
                "if_left",
                "",
                "undoing",
                "MAYBE",
                "reversibility",
                "",
                "materials",
                "",
                "minutes_low",
                "",
                "minutes_high",
                "1.5",
                "material",
                "12.345",
                "version",
                "1");
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.words(".problems > p"))
                .isEqualTo("Nothing is saved yet. 9 things to mend; what you typed is kept.");
        assertThat(page.lines(".problems li"))
                .containsExactly(
                        "How far it goes is not chosen; choose one of: playing order, sound, full.",
                        "Whether it can be undone is “MAYBE”; choose one of: yes, partly, no.",
                        "The title is empty. Write a few words.",
                        "The least minutes are missing; write a whole number of minutes from 0 to 60000.",
                        "The most minutes is “1.5”; allowed is a whole number from 0 to 60000.",
                        "The price of materials is “12.345”; allowed is an amount with at most two decimals, such as 1200"
                                + " or 1200,50.",
                        "The reason is empty. Write a few words.",
                        "What happens if it is left is empty. Write a few words.",
                        "How it can be taken back is empty. Write a few words.");
        assertThat(page.page().select("#f-material").val()).isEqualTo("12.345");
        assertThat(page.words("#problem-minutes_high"))
                .isEqualTo("The most minutes is “1.5”; allowed is a whole number from 0 to 60000.");
        assertThat(shop.treatments.get(line.id())).isEqualTo(line);
    }

    @Test
    void minutesTheWrongWayRoundAreRefused() {
        Treatment line = shop.propose("seam");
        OpenedDesk.Answer page = desk.post("/treatments/" + line.id() + "/edit", form("140", "40", "", 1));
        assertThat(page.lines(".problems li"))
                .containsExactly("The most minutes, 40, are fewer than the least, 140; exchange or correct them.");
    }

    @Test
    void aLineThatSomebodyElseChangedIsNotOverwritten() {
        Treatment line = shop.propose("seam");
        desk.post("/treatments/" + line.id() + "/edit", form("40", "140", "", 1));
        OpenedDesk.Answer page = desk.post("/treatments/" + line.id() + "/edit", form("41", "141", "", 1));
        assertThat(page.status()).isEqualTo(422);
        assertThat(page.lines(".problems li"))
                .containsExactly(
                        "Somebody else changed this while the form was open; nothing was overwritten. What stands now and"
                                + " what you typed are shown below where they differ. Mend your fields, then save again.");
    }

    @Test
    void aTreatmentInOwnWordsStartsWithTheFindingItIsFor() {
        String address = "/visits/1/treatments/own?finding=" + shop.chip;
        assertThat(desk.get(address)
                        .page()
                        .select("input[name=finding][checked]")
                        .eachAttr("value"))
                .containsExactly(Long.toString(shop.chip));
        OpenedDesk.Answer page = desk.postAndFollow("/visits/1/treatments/own", form("10", "20", "", 1));
        assertThat(page.lines(".proposal .title")).containsExactly("Glue two seams");
        assertThat(shop.treatments.listOf(1))
                .singleElement()
                .satisfies(kept -> assertThat(kept.template()).isEmpty());
    }
}
