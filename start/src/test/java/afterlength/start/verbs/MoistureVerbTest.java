package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.wood.Wood;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Reply;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class MoistureVerbTest {
    private static final String AIR = "\"temperature_C\":20,\"relative_humidity_pct\":40";
    private static final String FROM = ",\"from\":{\"temperature_C\":20,\"relative_humidity_pct\":60}";

    @Test
    void airAloneGivesTheMoistureAndItsUncertainty() {
        JsonNode answer = answer("{" + AIR + "}");
        assertThat(answer.get("emc_pct").asDouble()).isEqualTo(7.7224);
        assertThat(answer.get("emc_uncertainty_pct").asDouble()).isEqualTo(0.5);
        assertThat(answer.propertyNames()).containsExactly("emc_pct", "emc_uncertainty_pct", "caveats");
    }

    @Test
    void theAirBeforeGivesTheChange() {
        JsonNode answer = answer("{" + AIR + FROM + "}");
        assertThat(answer.get("change_pct").asDouble()).isEqualTo(-3.2774);
        assertThat(answer.has("width_change_mm")).isFalse();
    }

    @Test
    void aPlateGivesTheBandOfItsWidth() {
        JsonNode band = answer(
                        "{" + AIR + FROM + ",\"width_mm\":208,\"species\":\"norway spruce\",\"cut\":\"quarter\"}")
                .get("width_change_mm");
        assertThat(band.get("low").asDouble()).isEqualTo(-0.4772);
        assertThat(band.get("typical").asDouble()).isEqualTo(-1.193);
        assertThat(band.get("high").asDouble()).isEqualTo(-1.9088);
    }

    @Test
    void aPlateWithoutAChangeIsNotPassedOverInSilence() {
        JsonNode answer = answer("{" + AIR + ",\"width_mm\":208,\"species\":\"Sitka spruce\",\"cut\":\"slab\"}");
        assertThat(answer.get("caveats").toString())
                .contains("Without \\\"from\\\", the air before, there is no change of width.");
    }

    @Test
    void theThreeKeysOfAPlateBelongTogether() {
        JsonNode problems = reply("{" + AIR + FROM + ",\"width_mm\":208,\"species\":\"pine\"}")
                .get("problems");
        assertThat(problems.size()).isEqualTo(2);
        assertThat(problems.get(0).get("at").asString()).isEqualTo("/species");
        assertThat(problems.get(0).get("message").asString())
                .isEqualTo("species is the text \"pine\"; give one of: " + String.join(", ", Wood.listSpecies()) + ".");
        assertThat(problems.get(1).get("message").asString())
                .isEqualTo("cut is missing. Add the key \"cut\" and its value.");
    }

    @Test
    void theHelpNamesEveryWood() {
        assertThat(new MoistureVerb().keys()).contains(Wood.listSpecies());
    }

    private static JsonNode answer(String question) {
        JsonNode answer = reply(question);
        assertThat(answer.has("problems")).as(answer.toString()).isFalse();
        return answer;
    }

    private static JsonNode reply(String question) {
        Reply reply = new MoistureVerb().answer(DocumentReader.of(question.getBytes(StandardCharsets.UTF_8)));
        return JsonMapper.shared().readTree(reply.json());
    }
}
