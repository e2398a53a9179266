package afterlength.workshop.paper;

import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.util.Arrays;

/** Cuts a paragraph where its reading direction changes, by the Unicode algorithm as the Java library has it. */
final class DirectionRuns implements BidiSplitter {
    private BidiTextRun[] runs = {};

    @Override
    public void setParagraph(String paragraph, byte base) {
        Bidi bidi = new Bidi(paragraph, base == RTL ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT);
        byte[] levels = new byte[bidi.getRunCount()];
        runs = new BidiTextRun[levels.length];
        for (int run = 0; run < runs.length; run++) {
            levels[run] = (byte) bidi.getRunLevel(run);
            int start = bidi.getRunStart(run);
            runs[run] = new BidiTextRun(start, bidi.getRunLimit(run) - start, levels[run] % 2 == 0 ? LTR : RTL);
        }
        if (runs.length > 0) {
            Bidi.reorderVisually(levels, 0, runs, 0, runs.length);
        }
    }

    @Override
    public int countTextRuns() {
        return runs.length;
    }

    @Override
    public BidiTextRun getVisualRun(int run) {
        return Arrays.asList(runs).get(run);
    }

    @Override
    public byte getBaseDirection(String paragraph) {
        return paragraph
                .codePoints()
                .map(Character::getDirectionality)
                .filter(direction -> direction == Character.DIRECTIONALITY_LEFT_TO_RIGHT || isRightToLeft(direction))
                .mapToObj(direction -> isRightToLeft(direction) ? RTL : LTR)
                .findFirst()
                .orElse(NEUTRAL);
    }

    private static boolean isRightToLeft(int direction) {
        return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
                || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
    }
}
