package afterlength.workshop.paper;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which face can write a word and how wide it becomes. A sign that a face lacks is written in {@link Face#SYMBOLS} or {@link
 * Face#FAR_EASTERN}; one that no face has becomes the replacement mark U+FFFD, so that a loss is seen and never passes for a
 * letter. Kerning is left out: a word may be a few hundredths of its size narrower on the screen.
 */
public final class Lettering {
    /** What stands for a sign that no face can write. */
    static final int LOST = 0xFFFD;

    /** Far Eastern signs begin above it, so that their large face stays closed for everybody else. */
    private static final int LAST_WESTERN = 0x2E7F;

    private Lettering() {}

    /** Whether a text holds a sign that only the far eastern face can write. */
    static boolean needsFarEastern(String text) {
        return text.codePoints()
                .filter(sign -> sign > LAST_WESTERN)
                .anyMatch(sign -> faceFor(Face.SERIF, sign) == Face.FAR_EASTERN);
    }

    /** The signs of a text that no face can write, each once, in their order. */
    static List<Integer> listLost(String text) {
        return joined(text)
                .codePoints()
                .filter(sign -> sign >= ' ' && sign != LOST && !Character.isIdentifierIgnorable(sign))
                .filter(sign -> faceFor(Face.SERIF, sign) == null)
                .distinct()
                .boxed()
                .toList();
    }

    public static double width_mm(Face face, String words, double size_mm) {
        return spell(face, words).stream()
                        .mapToDouble(run -> width(run.face(), run.words()))
                        .sum()
                * size_mm;
    }

    /** The words with accents joined to their letters and lost signs marked; what can be written stays as it is. */
    static String writable(Face face, String words) {
        StringBuilder writable = new StringBuilder();
        joined(words).codePoints().forEach(sign -> writable.appendCodePoint(faceFor(face, sign) == null ? LOST : sign));
        return writable.toString();
    }

    /** The words cut where the face has to change. */
    static List<Run> spell(Face face, String words) {
        List<Run> runs = new ArrayList<>();
        for (int sign : writable(face, words).codePoints().toArray()) {
            Face found = faceFor(face, sign);
            Face needed = found == null ? Face.SYMBOLS : found;
            Run last = runs.isEmpty() ? null : runs.get(runs.size() - 1);
            if (last != null && last.face() == needed) {
                runs.set(runs.size() - 1, new Run(needed, last.words() + Character.toString(sign)));
            } else {
                runs.add(new Run(needed, Character.toString(sign)));
            }
        }
        return runs;
    }

    private static String joined(String words) {
        return Normalizer.normalize(words, Normalizer.Form.NFC);
    }

    private static @Nullable Face faceFor(Face face, int sign) {
        if (Glyphs.of(face).has(sign)) {
            return face;
        }
        if (Glyphs.of(Face.SYMBOLS).has(sign)) {
            return Face.SYMBOLS;
        }
        return sign > LAST_WESTERN && Glyphs.of(Face.FAR_EASTERN).has(sign) ? Face.FAR_EASTERN : null;
    }

    private static double width(Face face, String words) {
        Glyphs glyphs = Glyphs.of(face);
        return words.codePoints().mapToDouble(glyphs::advance_em).sum();
    }

    record Run(Face face, String words) {}
}
