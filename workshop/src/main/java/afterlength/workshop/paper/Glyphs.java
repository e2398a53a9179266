package afterlength.workshop.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;

/** The signs of one face with their widths, as a table read from the font file when first asked for. */
final class Glyphs {
    private static final Map<Face, Glyphs> READ = new ConcurrentHashMap<>();

    private final Map<Integer, Double> advances_em;

    private Glyphs(Map<Integer, Double> advances_em) {
        this.advances_em = advances_em;
    }

    static Glyphs of(Face face) {
        return READ.computeIfAbsent(face, Glyphs::read);
    }

    boolean has(int sign) {
        return advances_em.containsKey(sign);
    }

    double advance_em(int sign) {
        return advances_em.getOrDefault(sign, 0.0);
    }

    private static Glyphs read(Face face) {
        try (TrueTypeFont font = FontFiles.parse(face)) {
            CmapLookup signs = font.getUnicodeCmapLookup();
            double unitsPerEm = font.getUnitsPerEm();
            Map<Integer, Double> advances_em = new HashMap<>();
            for (int sign = ' '; sign <= 0x1FFFF; sign++) {
                int glyph = signs.getGlyphId(sign);
                if (glyph != 0) {
                    advances_em.put(sign, font.getAdvanceWidth(glyph) / unitsPerEm);
                }
            }
            return new Glyphs(Map.copyOf(advances_em));
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + face.file() + " cannot be read", broken);
        }
    }
}
