package afterlength.workshop.paper;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which face can write a word and how wide it becomes. A sign that a face lacks is written in {@link Face#SYMBOLS}; one that
 * no face has becomes the replacement mark U+FFFD, so that a loss is seen and never passes for a letter. Kerning is left
 * out: a word may be a few hundredths of its size narrower on the screen.
 */
public final class Lettering {
    /** What stands for a sign that no face can write. */
    static final int LOST = 0xFFFD;

    private Lettering() {}

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
            Face needed = Glyphs.of(face).has(sign) ? face : Face.SYMBOLS;
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
        return Glyphs.of(Face.SYMBOLS).has(sign) ? Face.SYMBOLS : null;
    }

    private static double width(Face face, String words) {
        Glyphs glyphs = Glyphs.of(face);
        return words.codePoints().mapToDouble(glyphs::advance_em).sum();
    }

    record Run(Face face, String words) {}
}
