package afterlength.workshop.paper;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Writes words of right-to-left scripts in the order in which they are seen from the left, as a page wants them. Arabic letters
 * are joined ({@link ArabicForms}); brackets are turned; marks stay behind their letter. Finer typesetting – places of vowel
 * marks, ligatures beyond lam-alef – is left out.
 */
final class RightToLeft implements BidiReorderer {
    private static final String TURNED = "()[]{}<>«»‹›";

    /** A line of a drawing as it is seen, its base direction from the left. */
    static String asSeen(String line) {
        if (!java.text.Bidi.requiresBidi(line.toCharArray(), 0, line.length())) {
            return line;
        }
        DirectionRuns runs = new DirectionRuns();
        runs.setParagraph(line, BidiSplitter.LTR);
        StringBuilder seen = new StringBuilder();
        for (int n = 0; n < runs.countTextRuns(); n++) {
            BidiTextRun run = runs.getVisualRun(n);
            String words = line.substring(run.getStart(), run.getStart() + run.getLength());
            seen.append(run.getDirection() == BidiSplitter.RTL ? backwards(ArabicForms.joined(words)) : words);
        }
        return seen.toString();
    }

    private static String backwards(String text) {
        List<String> letters = new ArrayList<>();
        text.codePoints().forEach(sign -> {
            int last = letters.size() - 1;
            if (last >= 0 && Character.getType(sign) == Character.NON_SPACING_MARK) {
                letters.set(last, letters.get(last) + Character.toString(sign));
            } else {
                letters.add(turned(sign));
            }
        });
        Collections.reverse(letters);
        return String.join("", letters);
    }

    private static String turned(int sign) {
        int place = TURNED.indexOf(sign);
        return place < 0 ? Character.toString(sign) : Character.toString(TURNED.charAt(place ^ 1));
    }

    @Override
    public String reorderRTLTextToLTR(String text) {
        return backwards(text);
    }

    @Override
    public String shapeText(String text) {
        return ArabicForms.joined(text);
    }

    @Override
    public String deshapeText(String text) {
        return ArabicForms.parted(text);
    }

    @Override
    public boolean isLiveImplementation() {
        return true;
    }
}
