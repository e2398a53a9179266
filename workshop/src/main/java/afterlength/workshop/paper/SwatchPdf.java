package afterlength.workshop.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;

/**
 * One bare page at exactly 1 : 1, without head or foot: swatches first, a drawing over them, both in millimetres from the lower
 * left corner of the page. For what is cut out and laid beside the work.
 */
public final class SwatchPdf {
    private SwatchPdf() {}

    public static byte[] of(PaperSize size, String title, String drawnBy, List<Swatch> swatches, Drawing over) {
        try (PDDocument document = new PDDocument()) {
            PdfTitle.set(document, title, "en", drawnBy);
            PDPage page = new PDPage(new PDRectangle(points(size.width_mm()), points(size.height_mm())));
            document.addPage(page);
            try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                put(swatches, content);
                PdfPen.draw(over, content, new PdfFonts(document), new Point(0, 0));
            }
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            document.save(pdf);
            return pdf.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException("the page '" + title + "' could not be drawn", broken);
        }
    }

    private static void put(List<Swatch> swatches, PDPageContentStream content) throws IOException {
        content.saveGraphicsState();
        content.transform(Matrix.getScaleInstance(points(1), points(1)));
        for (Swatch swatch : swatches) {
            if (swatch.isGrey()) {
                content.setNonStrokingColor((float) swatch.red());
            } else {
                content.setNonStrokingColor((float) swatch.red(), (float) swatch.green(), (float) swatch.blue());
            }
            content.addRect(
                    (float) swatch.corner().x_mm(), (float) swatch.corner().y_mm(), (float) swatch.width_mm(), (float)
                            swatch.height_mm());
            content.fill();
        }
        content.restoreGraphicsState();
    }

    private static float points(double mm) {
        return (float) (mm * PdfPen.POINTS_PER_MM);
    }
}
