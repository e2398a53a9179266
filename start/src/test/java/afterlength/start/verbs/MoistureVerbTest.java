package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.wood.Wood;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class MoistureVerbTest {
    private static final String AIR = "\"temperature_C\":20,\"relative_humidity_pct\":40";
    private static final String FROM = ",\"from\":{\"temperature_C\":20,\"relative_humidity_pct\":60}";

    @Test
    void airAloneGivesTheMoistureAndItsUncertainty() {
        JsonNode answer = Asked.answer(new MoistureVerb(), "{" + AIR + "}");
        assertThat(answer.get("emc_pct").asDouble()).isEqualTo(7.7224);
        assertThat(answer.get("emc_uncertainty_pct").asDouble()).isEqualTo(0.5);
        assertThat(answer.propertyNames()).containsExactly("emc_pct", "emc_uncertainty_pct", "caveats");
    }

    @Test
    void theAirBeforeGivesTheChange() {
        JsonNode answer = Asked.answer(new MoistureVerb(), "{" + AIR + FROM + "}");
        assertThat(answer.get("change_pct").asDouble()).isEqualTo(-3.2774);
        assertThat(answer.has("width_change_mm")).isFalse();
    }

    @Test
    void aPlateGivesTheBandOfItsWidth() {
        JsonNode band = Asked.answer(
                        new MoistureVerb(),
                        "{" + AIR + FROM + ",\"width_mm\":208,\"species\":\"norway spruce\",\"cut\":\"quarter\"}")
                .get("width_change_mm");
        assertThat(band.get("low").asDouble()).isEqualTo(-0.4772);
        assertThat(band.get("typical").asDouble()).isEqualTo(-1.193);
        assertThat(band.get("high").asDouble()).isEqualTo(-1.9088);
    }

    @Test
    void aPlateWithoutAChangeIsNotPassedOverInSilence() {
        JsonNode answer = Asked.answer(
                new MoistureVerb(), "{" + AIR + ",\"width_mm\":208,\"species\":\"Sitka spruce\",\"cut\":\"slab\"}");
        assertThat(answer.get("caveats").toString())
                .contains("Without \\\"from\\\", the air before, there is no change of width.");
    }

    @Test
    void theThreeKeysOfAPlateBelongTogether() {
        assertThat(Asked.messages(new MoistureVerb(), "{" + AIR + FROM + ",\"width_mm\":208,\"species\":\"pine\"}"))
                .containsExactly(
                        "species is the text \"pine\"; give one of: " + String.join(", ", Wood.listSpecies()) + ".",
                        "cut is missing. Add the key \"cut\" and its value.");
    }

    @Test
    void theHelpNamesEveryWood() {
        assertThat(new MoistureVerb().keys()).contains(Wood.listSpecies());
    }
}
