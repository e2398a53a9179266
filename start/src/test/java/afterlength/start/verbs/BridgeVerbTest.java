package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.Board;
import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.craft.setup.CrossPoint;
import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.StringSpacing;
import afterlength.craft.setup.TemplateCrown;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class BridgeVerbTest {
    static final BridgeInputs VIOLIN = new BridgeInputs(
            328,
            Board.ofOneRadius(270, 42),
            new StringSpacing.ByCentres(16.5),
            new StringSpacing.ByCentres(33.5),
            new BassTreble(0.45, 0.30),
            new BassTreble(5.5, 3.5),
            ClearanceConvention.SQUARE,
            27,
            0.3333333333,
            new RadiusCrown(42),
            List.of(
                    FittedString.ofTension("G", 0.8, 44),
                    FittedString.ofTension("D", 0.7, 45),
                    FittedString.ofTension("A", 0.6, 55),
                    FittedString.ofTension("E", 0.26, 75)),
            null);
    private static final String EXAMPLE = BridgeDocument.EXAMPLE;

    @Test
    void theExampleIsTheViolinOfTheSameMeasures() {
        assertSame(Asked.answer(new BridgeVerb(), EXAMPLE), VIOLIN);
    }

    @Test
    void theAnswerHasTheKeysOfTheContract() {
        JsonNode answer = Asked.answer(new BridgeVerb(), EXAMPLE);
        assertThat(answer.propertyNames())
                .containsExactly(
                        "strings",
                        "centre_height_mm",
                        "highest_mm",
                        "highest_at_y_mm",
                        "height_plus_minus_mm",
                        "caveats");
        assertThat(answer.get("strings").get(0).propertyNames())
                .containsExactly("name", "bridge_y_mm", "underside_mm", "wood_height_mm", "board_end_clearance_mm");
    }

    @Test
    void everyOptionalKeyReachesTheBridge() {
        String question = EXAMPLE.replace("\"square\"", "\"upright\"")
                .replace("{ \"radius_mm\": 42 }", "{ \"template_mm\": [[-20, 0], [0, 5], [20, 0]] }")
                .replace("\"groove_fraction\": 0.3333333333", "\"groove_fraction\": 0.5, \"spacing\": \"gaps\"")
                .replace(
                        "\"board_radius_mm\": 42",
                        "\"board_radius_mm\": 42, \"board_radius_nut_mm\": 40, \"scoop_mm\": {\"bass\": 0.8, \"treble\": 0.4},"
                                + " \"waist_width_mm\": 112, \"edge_drop_mm\": 12");
        BridgeInputs expected = VIOLIN.change()
                .clearanceConvention(ClearanceConvention.UPRIGHT)
                .crown(new TemplateCrown(List.of(new CrossPoint(-20, 0), new CrossPoint(0, 5), new CrossPoint(20, 0))))
                .grooveFraction(0.5)
                .nutSpacing(new StringSpacing.ByGaps(16.5))
                .bridgeSpacing(new StringSpacing.ByGaps(33.5))
                .board(new Board(270, 42, 40.0, new BassTreble(0.8, 0.4)))
                .done();
        assertSame(Asked.answer(new BridgeVerb(), question), expected);
    }

    @Test
    void whatMayBeLeftOutHasItsUsualValue() {
        String question = EXAMPLE.replace("\"clearance_convention\": \"square\",", "")
                .replace("\"groove_fraction\": 0.3333333333,", "")
                .replaceAll(", \"tension_N\": \\d+", "");
        assertSame(Asked.answer(new BridgeVerb(), question), VIOLIN);
    }

    @Test
    void placesOfTheStringsWinOverTheSpacingAndThatIsSaid() {
        String question = EXAMPLE.replace("\"name\": \"G\"", "\"name\": \"G\", \"bridge_y_mm\": -16")
                .replace("\"name\": \"D\"", "\"name\": \"D\", \"bridge_y_mm\": -5")
                .replace("\"name\": \"A\"", "\"name\": \"A\", \"bridge_y_mm\": 6")
                .replace("\"name\": \"E\"", "\"name\": \"E\", \"bridge_y_mm\": 17");
        JsonNode answer = Asked.answer(new BridgeVerb(), question);
        assertSame(
                answer,
                VIOLIN.change()
                        .bridgeSpacing(new StringSpacing.Given(List.of(-16.0, -5.0, 6.0, 17.0)))
                        .done());
        assertThat(answer.get("caveats").get(0).asString())
                .isEqualTo("bridge_spacing_mm was not used, because the strings have bridge_y_mm.");
    }

    @Test
    void problemsOfReadingAndOfTheCraftComeTogether() {
        String question = EXAMPLE.replace("\"board_radius_mm\": 42", "\"board_radius_mm\": -42")
                .replace("\"nut_clearance_mm\": { \"bass\": 0.45, \"treble\": 0.30 },", "\"projektion_mm\": 27,")
                .replace("\"name\": \"D\"", "\"name\": \"G\", \"bridge_y_mm\": -5")
                .replace("\"diameter_mm\": 0.6", "\"diameter_mm\": \"0.6\"");
        assertThat(Asked.places(new BridgeVerb(), question))
                .containsExactly(
                        "/strings/2/diameter_mm",
                        "/strings/0/bridge_y_mm",
                        "/strings/2/bridge_y_mm",
                        "/strings/3/bridge_y_mm",
                        "/nut_clearance_mm",
                        "/board_radius_mm",
                        "/strings/1/name",
                        "/projektion_mm");
    }

    @Test
    void aCrownIsWrittenInOneWayOnly() {
        String either =
                "crown needs either radius_mm or template_mm. Give one of them, or \"even play\" instead of the braces.";
        assertThat(Asked.messages(new BridgeVerb(), EXAMPLE.replace("{ \"radius_mm\": 42 }", "{}")))
                .containsExactly(either);
        assertThat(Asked.messages(
                        new BridgeVerb(),
                        EXAMPLE.replace("{ \"radius_mm\": 42 }", "{\"radius_mm\": 42, \"template_mm\": []}")))
                .containsExactly(either);
        assertThat(Asked.messages(new BridgeVerb(), EXAMPLE.replace("{ \"radius_mm\": 42 }", "\"round\"")))
                .containsExactly("crown is the text \"round\"; give one of: even play.");
        assertThat(Asked.messages(new BridgeVerb(), EXAMPLE.replace("{ \"radius_mm\": 42 }", "42")))
                .containsExactly("crown is the number 42; an object in braces is wanted.");
    }

    @Test
    void aTensionIsGivenInOneWayOnly() {
        assertThat(Asked.messages(
                        new BridgeVerb(),
                        EXAMPLE.replace("\"tension_N\": 44", "\"tension_N\": 44, \"frequency_Hz\": 196")))
                .containsExactly(
                        "A string has either tension_N or linear_density_g_m with frequency_Hz. Leave out one of them.",
                        "strings/0/linear_density_g_m is missing. Add the key \"linear_density_g_m\" and its value.");
    }

    /** Four decimals are printed. */
    private static void assertSame(JsonNode answer, BridgeInputs inputs) {
        BridgeShape shape = (BridgeShape) Bridge.shape(inputs);
        for (int i = 0; i < shape.strings().size(); i++) {
            JsonNode string = answer.get("strings").get(i);
            assertThat(string.get("name").asString())
                    .isEqualTo(shape.strings().get(i).name());
            assertClose(string, "bridge_y_mm", shape.strings().get(i).bridgeY().mm());
            assertClose(
                    string, "underside_mm", shape.strings().get(i).underside().mm());
            assertClose(
                    string,
                    "wood_height_mm",
                    shape.strings().get(i).woodHeight().mm());
            assertClose(
                    string,
                    "board_end_clearance_mm",
                    shape.strings().get(i).boardEndClearance().mm());
        }
        assertClose(answer, "centre_height_mm", shape.centreHeight().mm());
        assertClose(answer, "highest_mm", shape.highest().mm());
        assertClose(answer, "highest_at_y_mm", shape.highestAtY().mm());
    }

    private static void assertClose(JsonNode node, String key, double expected_mm) {
        assertThat(node.get(key).asDouble()).as(key).isCloseTo(expected_mm, within(0.00005001));
    }
}
