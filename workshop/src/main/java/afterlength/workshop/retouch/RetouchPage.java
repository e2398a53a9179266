package afterlength.workshop.retouch;

import afterlength.craft.colour.Light;
import afterlength.craft.colour.Spectrum;
import afterlength.workshop.desk.Cautions;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A loss with its recipes, or with the coat that waits to be measured.
 *
 * @param typed the reading after the last coat, as typed
 * @param finding words of its finding; null without one
 * @param grams how much is to be mixed
 */
record RetouchPage(
        Frame frame,
        RetouchCase one,
        Recipes recipes,
        Typed typed,
        @Nullable String finding,
        double grams) {

    String address() {
        return "/visits/" + one.retouch().visitId() + "/retouch/"
                + one.retouch().id();
    }

    Mix best() {
        return recipes.mixes().get(0);
    }

    List<Mix> others() {
        return recipes.mixes().subList(1, recipes.mixes().size());
    }

    String gramsWords() {
        return Figures.plain(grams) + " g";
    }

    /** How far the place is from the varnish beside it now. */
    String distance(Spectrum seen) {
        return "ΔE00 " + Figures.fixed(one.difference(seen, Light.D65), 1) + " in " + Light.D65.words() + ", "
                + Figures.fixed(one.difference(seen, Light.A), 1) + " under an " + Light.A.words() + ", "
                + Figures.fixed(one.difference(seen, Light.LED_B1), 1) + " under a " + Light.LED_B1.words();
    }

    String coatWords(LaidCoat coat) {
        return CoatWords.of(one, coat);
    }

    List<Cautions> cautions() {
        String media = String.join(
                " ", one.palette().stream().map(PaletteColour::medium).toList());
        return Cautions.of("solvent uv", media);
    }
}
