package afterlength.workshop.setup;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.desk.OpenedDesk.Answer;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The workbench over real HTTP: sentence, drawing, map and sections follow what is typed; what cannot be is said beside its field. */
class SetupPageTest {
    @TempDir
    Path folder;

    private SetupShop shop;
    private OpenedDesk desk;

    @BeforeEach
    void open() {
        shop = new SetupShop(folder);
        desk = OpenedDesk.with(shop.pages());
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private static Map<String, String> violin() {
        Map<String, String> form =
                new HashMap<>(SetupTyped.of(SetupBench.of(Bench.violin().inputs())));
        form.put("moment", "AFTER");
        form.put("hand", "M. Muster");
        return form;
    }

    private Answer post(String where, Map<String, String> form) {
        return desk.post(
                "/visits/1/setup" + where,
                form.entrySet().stream()
                        .flatMap(field -> Stream.of(field.getKey(), field.getValue()))
                        .toArray(String[]::new));
    }

    private static String part(Answer answer, String name) {
        return answer.words("[data-live=" + name + "]");
    }

    @Test
    void anEmptyBenchAsksForWhatIsMissing() {
        Answer answer = desk.get("/visits/1/setup");
        assertThat(answer.words("p.answer"))
                .isEqualTo(
                        "The bridge is drawn as soon as everything is there: 15 values are still to be measured or wished.");
        assertThat(answer.page().select("#live-front svg")).isEmpty();
    }

    @Test
    void aSavedSetUpIsOpenedWithEveryPart() {
        shop.setups.save(
                shop.setup(SetupMoment.AFTER, SetupBench.of(Bench.violin().inputs())));
        Answer answer = desk.get("/visits/1/setup");
        assertThat(answer.words("#live-answer p.answer"))
                .isEqualTo("Cut the bridge 33.1 mm high on the centre line ± 0.3 mm");
        for (String part :
                new String[] {"front", "map", "strings", "survey", "crowns", "side", "load", "millimetre", "nut"}) {
            assertThat(answer.words("#live-" + part)).as(part).isNotEmpty();
        }
        assertThat(answer.page().select(".handle").eachAttr("data-field"))
                .containsExactly(
                        "board_end_clearance_mm/bass",
                        "board_end_clearance_mm/treble",
                        "projection_mm",
                        "crown/radius_mm");
    }

    @Test
    void moreClearanceRaisesTheBridgeInSentenceAndTable() {
        Map<String, String> form = violin();
        Answer before = post("/drawing", form);
        form.put("board_end_clearance_mm/bass", "6,5");
        Answer after = post("/drawing", form);
        assertThat(part(before, "answer")).contains("33.1 mm");
        assertThat(part(after, "answer")).contains("33.8 mm").contains("G stands 6.5");
        assertThat(part(after, "front")).isNotEqualTo(part(before, "front"));
        assertThat(shop.setups.findNow(1, SetupMoment.AFTER)).isEmpty();
    }

    @Test
    void theMapShowsEveryStopWithItsRoom() {
        Map<String, String> form = violin();
        form.put("waist_width_mm", "112");
        form.put("edge_drop_mm", "11.5");
        Answer answer = post("/drawing", form);
        assertThat(answer.page().select("table.bowmap tbody tr")).hasSize(25);
        assertThat(answer.page().select("table.bowmap td.tightest")).hasSize(1);
        assertThat(part(answer, "map")).startsWith("Tightest is the ");
    }

    @Test
    void aBowThatPressesNeedsTensionsAndSaysSoBesideTheDrawing() {
        Map<String, String> form = violin();
        form.put("bow/force_N", "1");
        Answer answer = post("/drawing", form);
        assertThat(part(answer, "answer")).startsWith("Cut the bridge");
        assertThat(answer.lines("[data-live=map] p.problem"))
                .contains(
                        "The tension of string G is not known; a pressing bow needs it. Give the tension, or a bow force of 0 N.");
    }

    @Test
    void threeCrownsStandSideBySide() {
        Map<String, String> form = violin();
        form.put("crown/template_mm", "-20; 0\n-10; 4\n0; 5.3\n10; 4\n20; 0");
        Answer answer = post("/drawing", form);
        assertThat(answer.lines("[data-live=crowns] tbody th"))
                .containsExactly("radius 42", "own template", "even play");
        assertThat(part(answer, "crowns"))
                .contains("Of all plain arcs that keep the inner clearances between the outer two");
        form.put("moving", "yes");
        assertThat(part(post("/drawing", form), "crowns")).doesNotContain("Of all plain arcs");
    }

    @Test
    void aWrongPathIsSaidBesideItsFieldAndNothingIsLost() {
        Map<String, String> form = violin();
        form.put("crown", "TEMPLATE");
        form.put("crown/template_mm", "M0 0 A5 5 0 0 1 10 0");
        Answer answer = post("", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.words("[id=problem-crown/template_mm]"))
                .isEqualTo(
                        "The path has the command A; only M, L, H, V, C, Q and Z are read. Let the drawing program turn it into"
                                + " lines and plain curves.");
        assertThat(answer.words("textarea")).isEqualTo("M0 0 A5 5 0 0 1 10 0");
    }

    @Test
    void theCrownAsDrawnBecomesPointsThatGiveTheSameBridge() {
        Map<String, String> form = violin();
        form.put("take", "points");
        Answer answer = post("/look", form);
        assertThat(answer.words("#live-answer p.answer"))
                .isEqualTo("Cut the bridge 33.1 mm high on the centre line ± 0.3 mm");
        assertThat(answer.page().select("textarea").get(0).wholeText().lines()).hasSize(9);
        assertThat(answer.page().select(".handle[data-point]:not([data-point=-1])"))
                .isNotEmpty();
        assertThat(shop.setups.findNow(1, SetupMoment.AFTER)).isEmpty();
    }

    @Test
    void halfAWaistIsAskedForWhole() {
        Map<String, String> form = violin();
        form.put("waist_width_mm", "112");
        assertThat(post("", form).words("#problem-edge_drop_mm"))
                .isEqualTo(
                        "Edge below the belly is missing; it belongs to “Waist, edge to edge”. Measure both, or leave both out.");
    }

    @Test
    void beforeAndAfterAreLaidOverEachOther() {
        shop.setups.save(shop.setup(
                SetupMoment.BEFORE,
                SetupBench.of(Bench.violin().inputs().change().projection_mm(26).done())));
        Answer answer = post("/drawing", violin());
        assertThat(part(answer, "change"))
                .startsWith("The bridge goes home 1.0 mm higher on the centre line than it came, ± 0.4 mm");
        assertThat(answer.lines("[data-live=change] tbody tr").get(0)).isEqualTo("G 30.0 31.0 +1.0 0.0 0.0");
    }

    @Test
    void stringsFromThreeToSixCanBeAsked() {
        Map<String, String> form = violin();
        form.put("take", "more");
        assertThat(post("/look", form).page().select("table.strings tbody tr")).hasSize(5);
        form.put("take", "fewer");
        assertThat(post("/look", form).page().select("table.strings tbody tr")).hasSize(3);
    }

    @Test
    void placesStringByStringOpenTheirColumns() {
        Map<String, String> form = violin();
        form.put("spacing", "GIVEN");
        Answer answer = post("", form);
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.lines("p.problem"))
                .contains(
                        "The place at the nut of string 1 is missing. Measure it and write it in mm, such as 12.5 or 12,5.");
        assertThat(answer.page().select("input[name=strings/0/bridge_y_mm]")).hasSize(1);
    }

    @Test
    void commonRangesStandBesideTheFieldWithTheirSource() {
        Answer answer = post("/drawing", violin());
        Element range = answer.page().select("[data-live=range-projection_mm]").get(0);
        assertThat(range.text()).isEqualTo("common 26 – 28");
        assertThat(range.select("a").attr("href")).isEqualTo("/sources#setup-board-retailer");
    }

    @Test
    void aPostFollowsFromItsTwelveMeasures() {
        Map<String, String> form = violin();
        String[] values = {"3", "2", "6.2", "30", "15", "3", "-2", "-6", "14", "4.5", "-1", "-5"};
        for (int i = 0; i < values.length; i++) {
            form.put(BenchPost.all().get(i).field(), values[i]);
        }
        assertThat(part(post("/drawing", form), "post")).startsWith("Cut the post 5");
        form.put("post/diameter_mm", "-6");
        assertThat(post("", form).words("[id=problem-post/diameter_mm]"))
                .isEqualTo(
                        "The diameter of the post is -6 mm; it must be more than 0 mm and at most 40 mm. Measure the post.");
    }

    @Test
    void savingKeepsEverythingThatWasTyped() {
        Map<String, String> form = violin();
        form.put("break/after_length_mm", "54,5");
        form.put("strings/0/note", "G3");
        Answer answer = post("", form);
        assertThat(answer.location()).isEqualTo("/visits/1/setup?moment=AFTER&saved=yes");
        SetupBench bench =
                shop.setups.findNow(1, SetupMoment.AFTER).orElseThrow().bench();
        assertThat(bench.find(BenchReading.AFTER_LENGTH)).contains(54.5);
        assertThat(bench.notes()).containsExactly("G3", "", "", "");
    }
}
