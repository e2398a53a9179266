package afterlength.start.verbs;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.colour.RecipeCaveat;
import org.junit.jupiter.api.Test;

class RetouchVerbTest {
    private static final String EXAMPLE = new RetouchVerb().example();

    @Test
    void aRecipeSaysWhatItDoesUnderEachLight() {
        var answer = Asked.answer(new RetouchVerb(), EXAMPLE);
        var best = answer.get("recipes").get(0);
        assertThat(best.get("de00").propertyNames()).containsExactly("D65", "A", "LED-B1");
        assertThat(best.get("film_um").asDouble()).isBetween(0.1, 40.0);
        assertThat(best.get("first_coat").get("um").get(0).asDouble())
                .isBetween(
                        0.7499 * best.get("amounts").get(0).get("um").asDouble(),
                        0.7501 * best.get("amounts").get(0).get("um").asDouble() + 1e-3);
        assertThat(answer.get("caveats").toString()).contains(RecipeCaveat.WITHOUT_SPECTRUM.text());
    }

    @Test
    void theWavelengthsMustBeSaid() {
        String without = EXAMPLE.replaceFirst("\"wavelengths\": [^}]*},", "");
        assertThat(Asked.messages(new RetouchVerb(), without))
                .containsExactly(
                        "At which wavelengths the palette is given is not said: ground and target are colours without a"
                                + " spectrum, and there are 16 values, not the usual 36 from 380 to 730 nm. Add \"wavelengths\" with start_nm"
                                + " and step_nm.");
    }

    @Test
    void aColourNoSurfaceHasIsRefused() {
        assertThat(Asked.messages(new RetouchVerb(), EXAMPLE.replace("[42, 18, 36]", "[12, 90, 110]")))
                .containsExactly("No surface in daylight has this colour; give the L*, a* and b* that were measured.");
    }

    @Test
    void aColourIsGivenInOneWay() {
        assertThat(Asked.messages(new RetouchVerb(), EXAMPLE.replace("\"lab\": [42, 18, 36]", "\"colour\": 3")))
                .contains("A colour needs one of reflectance or lab. Give one of them.");
    }
}
