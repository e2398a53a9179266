package afterlength.workshop.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Sheets at exactly 1 : 1, one drawing on each, with head, foot and the two check rules. Nothing is ever scaled: a drawing
 * that does not fit is refused. The file asks the viewer not to scale either, but a printer may still do it, hence the rules.
 */
public final class SheetPdf {
    private final PaperSize size;
    private final SheetHead head;
    private final SheetFrame frame;
    private final List<Drawing> drawings;

    private SheetPdf(PaperSize size, SheetHead head, List<Drawing> drawings) {
        this.size = size;
        this.head = head;
        this.frame = new SheetFrame(head);
        this.drawings = List.copyOf(drawings);
    }

    /** Room for a drawing under this head; the same on either size of paper. */
    public static Bounds room(SheetHead head) {
        return new SheetFrame(head).room();
    }

    public static byte[] of(PaperSize size, SheetHead head, List<Drawing> drawings) {
        SheetPdf sheets = new SheetPdf(size, head, drawings);
        drawings.forEach(sheets::requireFit);
        try {
            return sheets.draw();
        } catch (IOException broken) {
            throw new UncheckedIOException("the sheets '" + head.title() + "' could not be drawn", broken);
        }
    }

    private void requireFit(Drawing drawing) {
        Bounds needed = drawing.bounds();
        Bounds room = frame.room();
        if (needed.width_mm() > room.width_mm() || needed.height_mm() > room.height_mm()) {
            throw new SheetTooSmall(String.format(
                    Locale.ROOT,
                    "the drawing '%s' is %.1f × %.1f mm; a sheet has room for %.1f × %.1f mm at 1:1. "
                            + "It is not made smaller; draw a part of it on each sheet",
                    drawing.title(),
                    needed.width_mm(),
                    needed.height_mm(),
                    room.width_mm(),
                    room.height_mm()));
        }
    }

    private byte[] draw() throws IOException {
        try (PDDocument document = new PDDocument()) {
            PdfTitle.set(document, head.title() + " · " + head.instrument(), head.language(), head.drawnBy());
            PdfFonts fonts = new PdfFonts(document);
            for (int i = 0; i < drawings.size(); i++) {
                addPage(document, fonts, i);
            }
            ByteArrayOutputStream pdf = new ByteArrayOutputStream();
            document.save(pdf);
            return pdf.toByteArray();
        }
    }

    private void addPage(PDDocument document, PdfFonts fonts, int index) throws IOException {
        PDPage page = new PDPage(new PDRectangle(
                (float) (size.width_mm() * PdfPen.POINTS_PER_MM), (float) (size.height_mm() * PdfPen.POINTS_PER_MM)));
        document.addPage(page);
        Drawing drawing = drawings.get(index);
        Point place = place(drawing.bounds());
        Drawing whole = frame.page(index + 1, drawings.size()).with(drawing.moved(place.x_mm(), place.y_mm()));
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            PdfPen.draw(whole, content, fonts, size.boxCorner());
        }
    }

    /** How far to move the drawing: to the middle of its room across, and up under the head. */
    private Point place(Bounds drawing) {
        Bounds room = frame.room();
        double spare_mm = room.width_mm() - drawing.width_mm();
        return new Point(room.left_mm() + spare_mm / 2 - drawing.left_mm(), room.top_mm() - drawing.top_mm());
    }
}
