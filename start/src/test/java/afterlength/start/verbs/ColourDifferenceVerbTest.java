package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ColourDifferenceVerbTest {
    /** Pairs 1 and 14 of the published table, docs/sources.md#ciede2000. */
    @Test
    void publishedPairs() {
        var answer = Asked.answer(
                new ColourDifferenceVerb(),
                "{\"pairs\":[{\"a\":[50,2.6772,-79.7751],\"b\":[50,0,-82.7485]},{\"a\":[50,-0.001,2.49],\"b\":[50,0.001,-2.49]}]}");
        assertThat(answer.get("de00").get(0).asDouble()).isEqualTo(2.0425);
        assertThat(answer.get("de00").get(1).asDouble()).isEqualTo(4.8045);
    }

    @Test
    void whatIsWrongIsNamed() {
        assertThat(Asked.messages(new ColourDifferenceVerb(), "{\"pairs\":[{\"a\":[50,2,-79],\"b\":[150,0]}]}"))
                .containsExactly("pairs/0/b is a list; a list of 3 is wanted, this one has 2.");
    }
}
