package afterlength.workshop.privacy;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.ledger.WordSweep;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the shop keeps about an owner, and what erasing would change.
 *
 * @param texts where the words stand, null when nobody looked yet: in a large shop that takes a moment
 * @param done what was erased just now, null before
 */
record PersonPage(
        Frame frame,
        Owner owner,
        @Nullable List<WordSweep.Found> texts,
        List<String> backups,
        Typed typed,
        @Nullable Erased done) {
    private static final int SHOWN = 60;
    private static final int LONGEST = 240;

    boolean looked() {
        return texts != null;
    }

    List<WordSweep.Found> shown() {
        return texts == null ? List.of() : texts.subList(0, Math.min(texts.size(), SHOWN));
    }

    int more() {
        return texts == null ? 0 : texts.size() - shown().size();
    }

    static String shortened(String text) {
        return text.length() > LONGEST ? text.substring(0, LONGEST) + " …" : text;
    }

    /** “finding, observation”. */
    static String place(WordSweep.Found found) {
        return (found.table() + ", " + found.column()).replace('_', ' ');
    }
}
