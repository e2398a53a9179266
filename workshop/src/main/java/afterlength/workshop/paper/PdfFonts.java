package afterlength.workshop.paper;

import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The faces of one PDF, embedded when first used and cut down to the signs used. */
final class PdfFonts {
    private final PDDocument document;
    private final Map<Face, PDFont> fonts = new EnumMap<>(Face.class);

    PdfFonts(PDDocument document) {
        this.document = document;
    }

    PDFont of(Face face) throws IOException {
        PDFont known = fonts.get(face);
        if (known != null) {
            return known;
        }
        PDFont font = PDType0Font.load(document, FontFiles.parse(face), true);
        fonts.put(face, font);
        return font;
    }
}
