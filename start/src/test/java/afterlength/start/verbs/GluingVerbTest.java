package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class GluingVerbTest {
    private static final String SPREAD = "\"glue_C\":60,\"wood_C\":20,\"glue_to_water\":0.5,\"wood\":\"spruce\"";

    /** docs/sources.md#thin-film: 5.3 s for 0.1 mm on thick spruce at 20 °C. */
    @Test
    void thickWoodIsAnsweredByTheHalfSpace() {
        JsonNode answer = Asked.answer(new GluingVerb(), "{" + SPREAD + ",\"film_mm\":0.1}");
        assertThat(answer.get("window_s").get("typical").asDouble()).isCloseTo(5.3, within(0.06));
        assertThat(answer.get("model").asString()).isEqualTo("half-space");
        assertThat(answer.get("valid_for_s").isNull()).isTrue();
        assertThat(answer.get("temperature_at_s").get(0).toString()).isEqualTo("[0,60]");
        assertThat(answer.get("warmed_parts")).hasSize(4);
        assertThat(answer.get("caveats").get(0).asString()).startsWith("Hot glue scalds");
    }

    @Test
    void aThinPlateIsAnsweredByThePlateAndSaysSo() {
        JsonNode answer = Asked.answer(new GluingVerb(), "{" + SPREAD + ",\"film_mm\":0.3,\"plate_mm\":2.5}");
        assertThat(answer.get("model").asString()).isEqualTo("plate");
        assertThat(answer.get("valid_for_s").asDouble()).isCloseTo(11.5, within(0.06));
        assertThat(answer.get("caveats").toString()).contains("Film and plate meet at 36.2 °C");
        assertThat(answer.get("window_s").get("low").asDouble())
                .isLessThan(answer.get("window_s").get("typical").asDouble());
    }

    @Test
    void anotherWoodIsGivenByItsNumbers() {
        String maple = "{\"conductivity_W_mK\":0.1716,\"density_kg_m3\":705.6,\"heat_J_kgK\":1620}";
        JsonNode answer = Asked.answer(
                new GluingVerb(), "{" + SPREAD.replace("\"spruce\"", maple) + ",\"film_mm\":0.1,\"faces\":\"one\"}");
        assertThat(answer.get("window_s").get("typical").asDouble()).isCloseTo(1.9, within(0.06));
    }

    @Test
    void tooHotIsRefusedWithEverythingElse() {
        assertThat(Asked.messages(new GluingVerb(), "{" + SPREAD.replace("60", "70") + ",\"film_mm\":0,\"glu\":1}"))
                .containsExactly(
                        "glue_C is 70 °C; give 20 to 65.6 °C, above which hide glue breaks down.",
                        "film_mm is 0 mm; give 0.01 to 2 mm.",
                        "The document has no key \"glu\". Keys known here: glue_C, wood_C, film_mm, glue_to_water, wood, gel_C, "
                                + "room_C, plate_mm, faces.");
    }
}
