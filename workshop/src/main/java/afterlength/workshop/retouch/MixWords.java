package afterlength.workshop.retouch;

import afterlength.craft.colour.Light;
import afterlength.craft.colour.Recipe;
import afterlength.workshop.desk.Figures;
import java.util.stream.Collectors;

/** Sentences about a recipe. */
final class MixWords {
    private MixWords() {}

    /** "63 parts amber and 37 parts red lake". */
    static String mixture(Mix mix) {
        return mix.lines().stream()
                .map(line -> parts(line.share()) + " parts " + line.colour().name())
                .collect(Collectors.joining(", "));
    }

    static String parts(double share) {
        double parts = 100 * share;
        return Figures.fixed(parts, parts < 10 ? 1 : 0);
    }

    static String answer(Mix mix, boolean first) {
        String film = (first ? "the whole film is " : "what is missing is ") + RetouchWords.coats(mix.coats());
        return "Mix " + mixture(mix) + "; " + film + ".";
    }

    /** How to lay a part of the film: one thinned coat, or several. */
    static String laying(double coats) {
        int times = (int) Math.ceil(coats - 1e-9);
        double each = coats / times;
        String thinned = each > 0.995
                ? "as it is"
                : Figures.fixed(100 * each, 0) + " parts of it with " + Figures.fixed(100 * (1 - each), 0)
                        + " parts of clear medium";
        return (times == 1 ? "one even coat of " + thinned : times + " even coats, each of " + thinned)
                + ", as thick as a coat of the drawdowns";
    }

    static String firstCoat(Mix mix) {
        double coats = mix.coats() * Recipe.FIRST_COAT;
        return "First coat, three quarters of the film (" + RetouchWords.coats(coats) + "): " + laying(coats)
                + ". It should then be " + Seen.words(mix.recipe().firstCoat())
                + " in daylight. Let it dry, measure it, and the rest is worked out.";
    }

    static String topUp(Mix mix) {
        return "Lay " + laying(mix.coats()) + ". Let it dry and measure again.";
    }

    /** "0.02 in daylight (D65), 0.31 under incandescent lamp (A), …". */
    static String differences(Mix mix) {
        return "ΔE00 to the varnish beside it: " + Figures.fixed(mix.difference(Light.D65), 2) + " in "
                + Light.D65.words()
                + ", " + Figures.fixed(mix.difference(Light.A), 2) + " under an " + Light.A.words() + ", "
                + Figures.fixed(mix.difference(Light.LED_B1), 2) + " under a " + Light.LED_B1.words() + ".";
    }

    /** How far off the two readings are that the recipe goes from and to: it can be no nearer than that. */
    static String known(Retouch retouch) {
        double off =
                Math.max(retouch.groundClass().typical(), retouch.targetClass().typical());
        return "Reckoned, from readings that are themselves about " + Figures.fixed(off, 1) + " off in daylight.";
    }

    /** For the diary. */
    static String material(Mix mix, double part) {
        String mixed = mix.lines().stream()
                .map(line -> parts(line.share()) + " parts " + line.colour().words())
                .collect(Collectors.joining(", "));
        return "retouch colour: " + mixed + "; " + RetouchWords.coats(mix.coats() * part);
    }
}
