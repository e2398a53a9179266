package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class StringsVerbTest {
    private static final String ONE = "{\"speaking_length_mm\":328,\"strings\":[{\"note\":\"A4\",\"tension_N\":55}]%s}";

    /** T = 4 f² L² µ, forwards and backwards, and 2 T cos(θ/2), reckoned here once more; four decimals are printed. */
    @Test
    void theExampleIsReckonedByHand() {
        JsonNode answer = Asked.answer(new StringsVerb(), new StringsVerb().example());
        JsonNode g = answer.get("strings").get(0);
        double g_Hz = 440 * Math.pow(2, -14 / 12.0);
        double g_N = 4 * g_Hz * g_Hz * 0.328 * 0.328 * 2.66e-3;
        assertThat(g.get("frequency_Hz").asDouble()).isCloseTo(g_Hz, within(0.00005001));
        assertThat(g.get("tension_N").asDouble()).isCloseTo(g_N, within(0.00005001));
        assertThat(g.get("downforce_N").asDouble())
                .isCloseTo(2 * g_N * Math.cos(Math.toRadians(79)), within(0.00005001));
        double e_g_m = 7850 * Math.PI * 0.26 * 0.26 / 4 / 1000;
        assertThat(answer.get("strings").get(3).get("linear_density_g_m").asDouble())
                .isCloseTo(e_g_m, within(0.00005001));
        double total_N = answer.get("strings").values().stream()
                .mapToDouble(string -> string.get("tension_N").asDouble())
                .sum();
        assertThat(answer.get("totals").get("tension_N").asDouble())
                .isCloseTo(total_N, within(0.0003)); // four roundings
        assertThat(answer.get("totals").get("tension_kgf").asDouble()).isCloseTo(total_N / 9.80665, within(0.0003));
    }

    @Test
    void withoutAnAngleThereIsNoDownforce() {
        JsonNode answer = Asked.answer(new StringsVerb(), ONE.formatted(""));
        assertThat(answer.get("strings").get(0).get("downforce_N").isNull()).isTrue();
        assertThat(answer.get("totals").get("downforce_kgf").isNull()).isTrue();
        assertThat(answer.get("lean_deg").isNull()).isTrue();
        assertThat(answer.get("strings").get(0).get("tension_N").asDouble()).isEqualTo(55);
    }

    /** Slopes of 8° and asin(11/55) = 11.537°: the load leans by half their difference. */
    @Test
    void theHeightsGiveTheLean() {
        String heights =
                ",\"break\":{\"after_length_mm\":55,\"tail_height_mm\":44,\"bridge_height_mm\":55,\"neck_slope_deg\":8}";
        JsonNode answer = Asked.answer(new StringsVerb(), ONE.formatted(heights));
        assertThat(answer.get("lean_deg").asDouble()).isEqualTo(1.7685);
        assertThat(answer.get("strings").get(0).get("downforce_N").asDouble()).isPositive();
    }

    @Test
    void whatContradictsItselfIsRefused() {
        String twice = ",\"string_angle_deg\":158,\"break\":{\"after_length_mm\":55}";
        assertThat(Asked.places(new StringsVerb(), ONE.formatted(twice)))
                .containsExactly(
                        "/break/tail_height_mm",
                        "/break/bridge_height_mm",
                        "/break/neck_slope_deg",
                        "/string_angle_deg");
        String both =
                "{\"speaking_length_mm\":328,\"strings\":[{\"note\":\"H4\",\"tension_N\":55,\"diameter_mm\":1},{\"note\":\"A4\"}]}";
        assertThat(Asked.places(new StringsVerb(), both)).containsExactly("/strings/0", "/strings/1");
        assertThat(Asked.messages(new StringsVerb(), both).get(1))
                .isEqualTo(
                        "A string needs one of linear_density_g_m, diameter_mm with density_kg_m3, or tension_N. Give one of"
                                + " them.");
    }

    @Test
    void aNoteThatCannotBeReadIsRefused() {
        assertThat(Asked.places(new StringsVerb(), ONE.replace("A4", "H4").formatted(",\"a4_Hz\":44")))
                .containsExactly("/a4_Hz", "/strings/0/note");
    }
}
