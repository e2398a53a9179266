package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.BowClearance;
import afterlength.craft.setup.BowPlace;
import afterlength.craft.setup.BowReading;
import afterlength.craft.setup.BowedString;
import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.Waist;
import java.util.Map;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class BowingVerbTest {
    private static final BowingVerb BOWING = new BowingVerb();
    private static final String EXAMPLE = BOWING.example();

    @Test
    void theExampleIsTheViolinOfTheSameMeasures() {
        BridgeShape shape = (BridgeShape) Bridge.shape(BridgeVerbTest.VIOLIN
                .change()
                .board(BridgeVerbTest.VIOLIN.board().withScoop(new BassTreble(0.8, 0.4)))
                .waist(new Waist(110, 13))
                .done());
        BowReading reading = (BowReading) BowClearance.at(shape, new BowPlace(30, 1.0, Map.of("A", 164.0)));
        JsonNode answer = Asked.answer(BOWING, EXAMPLE);
        assertThat(answer.get("tightest").asString())
                .isEqualTo(reading.findTightest().orElseThrow().name());
        for (int i = 0; i < 4; i++) {
            BowedString expected = reading.strings().get(i);
            JsonNode string = answer.get("strings").get(i);
            assertThat(string.get("name").asString()).isEqualTo(expected.name());
            assertClose(
                    string,
                    "clear_angle_deg",
                    expected.findClearAngle().orElseThrow().deg());
            assertClose(
                    string,
                    "limit_bass_deg",
                    expected.findLimitBass().orElseThrow().deg());
            assertClose(
                    string,
                    "limit_treble_deg",
                    expected.findLimitTreble().orElseThrow().deg());
        }
        assertClose(
                answer.get("strings").get(2),
                "margin_mm",
                reading.strings().get(2).findMargin().orElseThrow().mm());
        assertThat(answer.get("strings").get(0).get("margin_mm").isNull()).isTrue();
    }

    @Test
    void withoutTheWaistOuterStringsHaveNoClearAngle() {
        String question = EXAMPLE.replace("\"waist_width_mm\": 110,", "").replace("\"edge_drop_mm\": 13,", "");
        JsonNode answer = Asked.answer(BOWING, question);
        assertThat(answer.get("strings").get(0).get("clear_angle_deg").isNull()).isTrue();
        assertThat(answer.get("strings").get(0).get("limit_treble_deg").isNumber())
                .isTrue();
        assertThat(answer.get("strings").get(1).get("clear_angle_deg").isNumber())
                .isTrue();
        assertThat(answer.get("caveats").toString()).contains("The waist was not measured");
    }

    @Test
    void problemsOfTheBowStandAtTheirKeys() {
        String question = EXAMPLE.replace("\"distance_mm\": 30", "\"distance_mm\": 400")
                .replace("\"force_N\": 1.0", "\"force_N\": -1")
                .replace("{ \"A\": 164 }", "{ \"H\": 164, \"A\": 20, \"D\": \"far\" }");
        assertThat(Asked.places(BOWING, question))
                .containsExactly(
                        "/bow/force_N", "/stopped_at_mm/D", "/bow/distance_mm", "/stopped_at_mm/A", "/stopped_at_mm/H");
    }

    @Test
    void problemsOfBridgeAndBowComeTogether() {
        String question = EXAMPLE.replace("\"force_N\": 1.0", "\"force_N\": -1")
                .replace("\"projection_mm\": 27", "\"projection_mm\": -27");
        assertThat(Asked.places(BOWING, question)).containsExactly("/bow/force_N", "/projection_mm");
    }

    @Test
    void aPressedStringNeedsItsTension() {
        assertThat(Asked.places(BOWING, EXAMPLE.replace(", \"tension_N\": 44", "")))
                .containsExactly("/strings/0/tension_N");
    }

    /** Four decimals are printed. */
    private static void assertClose(JsonNode node, String key, double expected) {
        assertThat(node.get(key).asDouble()).as(key).isCloseTo(expected, within(0.00005001));
    }
}
