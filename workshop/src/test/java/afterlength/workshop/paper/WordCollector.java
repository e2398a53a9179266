package afterlength.workshop.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Reads the words of a page with their places. */
final class WordCollector extends PDFTextStripper {
    private final List<MeasuredWord> words = new ArrayList<>();

    static List<MeasuredWord> words(PDDocument document, int page) {
        WordCollector collector = new WordCollector();
        collector.setStartPage(page);
        collector.setEndPage(page);
        try {
            String ignored = collector.getText(document);
            assert ignored != null;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return collector.words;
    }

    @Override
    protected void writeString(String text, List<TextPosition> positions) {
        TextPosition first = positions.get(0);
        double k = PdfPen.POINTS_PER_MM;
        words.add(new MeasuredWord(
                text,
                first.getTextMatrix().getTranslateX() / k,
                first.getTextMatrix().getTranslateY() / k,
                first.getFontSizeInPt() / k));
    }
}
