package afterlength.workshop.paper;

import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * Measures a PDF as a restorer would measure the print: it follows the page's own path operators, not a picture of it, and
 * answers in millimetres from the lower left corner of the page. Pages are counted from 1.
 */
public final class PdfRuler implements AutoCloseable {
    private final PDDocument document;

    private PdfRuler(PDDocument document) {
        this.document = document;
    }

    public static PdfRuler of(byte[] pdf) {
        try {
            return new PdfRuler(Loader.loadPDF(pdf));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    public PDDocument document() {
        return document;
    }

    public int pages() {
        return document.getNumberOfPages();
    }

    public double width_mm(int page) {
        return page(page).getMediaBox().getWidth() / PdfPen.POINTS_PER_MM;
    }

    public double height_mm(int page) {
        return page(page).getMediaBox().getHeight() / PdfPen.POINTS_PER_MM;
    }

    /** Every straight piece of every stroked path. */
    public List<MeasuredLine> lines(int page) {
        return PathCollector.lines(page(page));
    }

    /** Level lines of about this length, within the tolerance. */
    public List<MeasuredLine> levelLines(int page, double length_mm, double tolerance_mm) {
        return lines(page, length_mm, tolerance_mm, MeasuredLine::isLevel);
    }

    /** Upright lines of about this length, within the tolerance. */
    public List<MeasuredLine> uprightLines(int page, double length_mm, double tolerance_mm) {
        return lines(page, length_mm, tolerance_mm, MeasuredLine::isUpright);
    }

    /** The box of every filled path. */
    public List<Rectangle2D> areas(int page) {
        return PathCollector.areas(page(page));
    }

    public String text() {
        return text(1, pages());
    }

    public String text(int page) {
        return text(page, page);
    }

    /** Words with the place of their baseline's beginning, in the order they are written. */
    public List<MeasuredWord> words(int page) {
        return WordCollector.words(document, page);
    }

    public List<PDFont> fonts() {
        List<PDFont> fonts = new ArrayList<>();
        for (PDPage page : document.getPages()) {
            for (COSName name : page.getResources().getFontNames()) {
                try {
                    fonts.add(page.getResources().getFont(name));
                } catch (IOException broken) {
                    throw new UncheckedIOException(broken);
                }
            }
        }
        return fonts;
    }

    private List<MeasuredLine> lines(int page, double length_mm, double tolerance_mm, Predicate<MeasuredLine> lies) {
        return lines(page).stream()
                .filter(lies)
                .filter(line -> Math.abs(line.length_mm() - length_mm) <= tolerance_mm)
                .toList();
    }

    private String text(int first, int last) {
        try {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setStartPage(first);
            stripper.setEndPage(last);
            stripper.setSortByPosition(true);
            return stripper.getText(document);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private PDPage page(int page) {
        return document.getPage(page - 1);
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
