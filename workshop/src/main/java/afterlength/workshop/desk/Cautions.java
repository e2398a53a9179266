package afterlength.workshop.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The usual cautions of the bench, found by the words of a step: what it needs and what it is called. General words of our own after
 * {@code docs/sources.md#bench-cautions}; they name no limits, since limits differ by country and year.
 */
public enum Cautions {
    HOT_GLUE(
            "hot glue",
            "Hot glue scalds. Heat it in a water bath, never over a flame, and keep the cable out of the way of hands."),
    OILY_RAGS(
            "\\boil\\b|oil varnish|drying oil",
            "Rags with drying oil warm up by themselves and can catch fire within hours. Spread them flat outdoors until "
                    + "they are hard, or keep them under water in a lidded metal can; never in a heap or a bin."),
    SOLVENTS(
            "solvent|extraction|spirit|varnish|colours|retouch|french polish",
            "Solvent vapour: air the room or extract at the bench, keep flames and sparks away, wear gloves that hold "
                    + "against it, and keep spirit off old varnish."),
    ULTRAVIOLET(
            "\\buv\\b|ultraviolet",
            "Ultraviolet harms eyes and skin without being felt: glasses made for it, covered skin, short looks; it also "
                    + "ages varnish and colours."),
    DUST(
            "\\bplane|scrape|\\bfiles?\\b|\\bream|shaper|\\btrim|\\bshape\\b|\\bdrill|\\bsand",
            "Wood dust: extract it or wear a mask. Ebony and some other woods make hands and lungs sensitive; old varnish "
                    + "and fittings can hold lead or other poisons."),
    STRING_TENSION(
            "\\bstrings?\\b(?! length)|to pitch|sound ?post|\\bbridge\\b|\\bslacken",
            "Strings whip when they break, and the post falls when tension goes: let all strings down evenly, pad under the "
                    + "tailpiece, keep eyes out of their line, and put no tension on anything that is still wet."),
    BLADE(
            "thin knife|\\bknife\\b|release seams|take neck out",
            "A blade slips or runs into a crack: keep both hands behind its edge, make small movements, stop at every "
                    + "crack.");

    /** Said once wherever cautions stand. */
    public static final String FIRST_OF_ALL =
            "These are general words. The data sheets of what you use, local rules and licensed practice come first.";

    private final Pattern words;
    private final String text;

    Cautions(String words, String text) {
        this.words = Pattern.compile(words);
        this.text = text;
    }

    public String text() {
        return text;
    }

    /** The cautions of a step, in a fixed order; none when its words call for none. */
    public static List<Cautions> of(String needs, String name) {
        String all = (needs + " · " + name).toLowerCase(Locale.ROOT).replace('_', ' ');
        return Arrays.stream(values())
                .filter(caution -> caution.words.matcher(all).find())
                .toList();
    }
}
