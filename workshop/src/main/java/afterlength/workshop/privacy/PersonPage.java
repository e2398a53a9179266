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
 * @param done what was erased just now, null before
 */
record PersonPage(
        Frame frame,
        Owner owner,
        List<WordSweep.Found> texts,
        List<String> backups,
        Typed typed,
        @Nullable Erased done) {
    private static final int SHOWN = 60;
    private static final int LONGEST = 240;

    List<WordSweep.Found> shown() {
        return texts.size() > SHOWN ? texts.subList(0, SHOWN) : texts;
    }

    int more() {
        return texts.size() - shown().size();
    }

    static String shortened(String text) {
        return text.length() > LONGEST ? text.substring(0, LONGEST) + " …" : text;
    }

    /** “finding, observation”. */
    static String place(WordSweep.Found found) {
        return (found.table() + ", " + found.column()).replace('_', ' ');
    }
}
