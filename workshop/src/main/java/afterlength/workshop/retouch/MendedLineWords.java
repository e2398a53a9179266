package afterlength.workshop.retouch;

import afterlength.craft.colour.LineVisibility;
import afterlength.workshop.desk.Figures;

/** Sentences about a mended line. */
final class MendedLineWords {
    static final String LIMITS =
            "Read from photographs by calculation, as an eye resolves them from 40 cm; gloss, relief and another light are not in it.";

    static final String RAKING =
            "Gloss steps and relief are not seen this way. Take a second photograph in raking light for them.";

    static final String PLUS_MINUS =
            "± is two things together: how far two places alike may differ in one photograph (by calculation with invented cameras),"
                    + " and how much less the line reads a tenth of a millimetre beside.";

    static final String SEARCHED =
            "Nobody marks a line to a tenth, so it is looked for half a millimetre to either side of the mark, and so are the"
                    + " untouched lines. Of those beside it, one that reads more than thrice the middle one is left out.";

    private MendedLineWords() {}

    static String answer(MendedLine line) {
        return "From ΔE00 " + stands(line.before()) + ", to " + stands(line.after()) + ", seen from 40\u00a0cm.";
    }

    /** "6.2 ± 0.5, visible". */
    static String stands(LineSight sight) {
        return figure(sight) + ", " + word(sight);
    }

    static String figure(LineSight sight) {
        return Figures.fixed(sight.high(), 1) + "\u00a0±\u00a0" + Figures.fixed(sight.plusMinus(), 1);
    }

    /** What would be said, and what might be said as well within its ±. */
    static String word(LineSight sight) {
        LineVisibility seen = sight.visibility();
        LineVisibility.Word said = seen.word();
        LineVisibility.Word most = seen.wordFor(sight.high() + sight.plusMinus());
        LineVisibility.Word least = seen.wordFor(Math.max(0, sight.high() - sight.plusMinus()));
        String perhaps = most != said ? most.words() : least != said ? least.words() : "";
        return said.words() + (perhaps.isEmpty() ? "" : " (within its ± perhaps: " + perhaps + ")");
    }
}
