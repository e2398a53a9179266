package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;

class PassageVerbTest {
    private static final String BOX = "\"outline_mm\":[[0,0],[20,0],[20,6],[0,6]]";
    private static final String BAR = ",\"section_mm\":{\"width\":12,\"thickness\":5}";

    @Test
    void aBarThatPassesIsPlaced() {
        JsonNode answer = Asked.answer(new PassageVerb(), "{" + BOX + BAR + "}");
        assertThat(answer.propertyNames())
                .containsExactly(
                        "passes",
                        "place",
                        "air_mm",
                        "spare_mm",
                        "largest_thickness_for_width_mm",
                        "largest_width_for_thickness_mm",
                        "lean_deg",
                        "frontier_mm",
                        "caveats");
        assertThat(answer.get("passes").asBoolean()).isTrue();
        assertThat(answer.get("place").get("turn_deg").asDouble()).isZero();
        assertThat(answer.get("air_mm").asDouble()).isCloseTo(0.5, within(0.011));
        assertThat(answer.get("largest_thickness_for_width_mm").asDouble()).isEqualTo(6);
        assertThat(answer.get("largest_width_for_thickness_mm").asDouble()).isEqualTo(20);
        assertThat(answer.get("caveats").toString())
                .contains("plate_mm was not given; the lean is reckoned for a plate of 2.7 mm.");
    }

    @Test
    void aBarThatDoesNotFitHasNoPlace() {
        JsonNode answer =
                Asked.answer(new PassageVerb(), "{" + BOX + ",\"section_mm\":{\"width\":12,\"thickness\":8}}");
        assertThat(answer.get("passes").asBoolean()).isFalse();
        assertThat(answer.get("place").isNull()).isTrue();
        assertThat(answer.get("air_mm").asDouble()).isCloseTo(-1, within(0.011));
        assertThat(answer.get("lean_deg").get("flat").isNull()).isTrue();
    }

    @Test
    void everythingWrongIsSaidAtOnce() {
        assertThat(Asked.messages(
                        new PassageVerb(),
                        "{\"outline_mm\":[[0,0],[1],[2,\"x\"]],\"section_mm\":{\"width\":12},\"plate_mm\":-1}"))
                .containsExactly(
                        "outline_mm/1 is a list; a list of 2 is wanted, this one has 1.",
                        "outline_mm/2/1 is the text \"x\"; a number is wanted, such as 12.5, without quotation marks and"
                                + " without unit.",
                        "section_mm/thickness is missing. Add the key \"thickness\" and its value.",
                        "plate_mm is -1 mm; give 0 to 50 mm.");
    }

    @Test
    void anOutlineThatCrossesItselfIsRefusedAtItsPlace() {
        String crossed = "{\"outline_mm\":[[0,0],[10,10],[10,0],[0,10]]" + BAR + "}";
        assertThat(Asked.places(new PassageVerb(), crossed)).containsExactly("/outline_mm");
    }
}
