package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class VarnishVerbTest {
    /** The worked batch of the study of materials, docs/sources.md#film-formulas. */
    @Test
    void theWorkedBatch() {
        var answer = Asked.answer(new VarnishVerb(), new VarnishVerb().example());
        assertThat(answer.get("volume_mL").asDouble()).isCloseTo(215.435, within(5e-4));
        assertThat(answer.get("volume_solids_pct").asDouble()).isCloseTo(46.646, within(5e-4));
        assertThat(answer.get("oil_to_resin").toString())
                .isEqualTo("{\"scale\":\"mass of oil : mass of resin\",\"value\":1,\"class\":\"medium\"}");
        assertThat(answer.get("other_scales").get(1).get("class").asString()).isEqualTo("short");
        assertThat(answer.get("film").get("wet_um_per_coat").asDouble()).isCloseTo(16.08, within(5e-3));
        assertThat(answer.get("film").get("volume_mL_per_coat").asDouble()).isCloseTo(2.41, within(5e-3));
    }

    @Test
    void whatIsWrongIsNamed() {
        assertThat(Asked.messages(
                        new VarnishVerb(),
                        "{\"ingredients\":[{\"name\":\"oil\",\"mass_g\":5,\"density_kg_m3\":930,\"solid\":false,\"part\":\"oil\"}],"
                                + "\"coats\":2}"))
                .containsExactly(
                        "The part is oil, and solid is false; oil, resin and other solid stay in the film, a solvent does not.",
                        "Coats alone make no film. Add dry_um, the wanted build, or leave coats out.");
    }
}
