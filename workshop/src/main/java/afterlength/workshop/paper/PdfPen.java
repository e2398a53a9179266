package afterlength.workshop.paper;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Draws on a page of a PDF at exactly 1 : 1. The page is told once that its unit is the millimetre (72/25.4 points), and
 * everything after is written in millimetres, so no length is ever converted by itself.
 */
final class PdfPen {
    static final double POINTS_PER_MM = 72 / 25.4;

    /** How far a circle's four Bézier handles reach, as a part of its radius; the arc is true to 0.03 %. */
    private static final double HANDLE = 4 * (Math.sqrt(2) - 1) / 3;

    private final PDPageContentStream page;
    private final PdfFonts fonts;

    private PdfPen(PDPageContentStream page, PdfFonts fonts) {
        this.page = page;
        this.fonts = fonts;
    }

    /** Draws with the drawing's own origin at the given place of the page, measured from its lower left corner. */
    static void draw(Drawing drawing, PDPageContentStream page, PdfFonts fonts, Point origin) throws IOException {
        float scale = (float) POINTS_PER_MM;
        page.saveGraphicsState();
        page.transform(new Matrix(
                scale, 0, 0, scale, (float) (origin.x_mm() * POINTS_PER_MM), (float) (origin.y_mm() * POINTS_PER_MM)));
        page.setLineJoinStyle(1);
        PdfPen pen = new PdfPen(page, fonts);
        for (Shape shape : drawing.shapes()) {
            pen.put(shape);
        }
        page.restoreGraphicsState();
    }

    private void put(Shape shape) throws IOException {
        if (shape instanceof StraightLine line) {
            moveTo(line.from());
            lineTo(line.to());
            stroke(line.stroke());
        } else if (shape instanceof Outline outline) {
            put(outline);
        } else if (shape instanceof Circle circle) {
            put(circle);
        } else if (shape instanceof Words words) {
            put(words);
        }
    }

    private void put(Outline outline) throws IOException {
        if (outline.fill() != null) {
            trace(outline, true);
            fill(outline.fill());
        }
        if (outline.stroke() != null) {
            trace(outline, outline.closed());
            stroke(outline.stroke());
        }
    }

    private void trace(Outline outline, boolean closed) throws IOException {
        moveTo(outline.points().get(0));
        for (Point point : outline.points().subList(1, outline.points().size())) {
            lineTo(point);
        }
        if (closed) {
            page.closePath();
        }
    }

    private void put(Circle circle) throws IOException {
        if (circle.fill() != null) {
            trace(circle);
            fill(circle.fill());
        }
        if (circle.stroke() != null) {
            trace(circle);
            stroke(circle.stroke());
        }
    }

    private void trace(Circle circle) throws IOException {
        double r_mm = circle.radius_mm();
        double h_mm = r_mm * HANDLE;
        Point c = circle.centre();
        moveTo(c.moved(r_mm, 0));
        curveTo(c.moved(r_mm, h_mm), c.moved(h_mm, r_mm), c.moved(0, r_mm));
        curveTo(c.moved(-h_mm, r_mm), c.moved(-r_mm, h_mm), c.moved(-r_mm, 0));
        curveTo(c.moved(-r_mm, -h_mm), c.moved(-h_mm, -r_mm), c.moved(0, -r_mm));
        curveTo(c.moved(h_mm, -r_mm), c.moved(r_mm, -h_mm), c.moved(r_mm, 0));
        page.closePath();
    }

    private void put(Words words) throws IOException {
        float size = (float) words.size_mm();
        Point start = new Point(-words.width_mm() * words.anchor().partBefore(), 0).turned(words.turn_deg());
        Point at = start.moved(words.at().x_mm(), words.at().y_mm());
        Ink ink = words.ink();
        page.setNonStrokingColor(ink.red(), ink.green(), ink.blue());
        page.beginText();
        page.setTextMatrix(
                Matrix.getRotateInstance(Math.toRadians(words.turn_deg()), (float) at.x_mm(), (float) at.y_mm()));
        for (Lettering.Run run : Lettering.spell(words.face(), RightToLeft.asSeen(words.words()))) {
            page.setFont(fonts.of(run.face()), size);
            page.showText(run.words());
        }
        page.endText();
    }

    private void stroke(Stroke stroke) throws IOException {
        Ink ink = stroke.ink();
        page.setStrokingColor(ink.red(), ink.green(), ink.blue());
        page.setLineWidth((float) stroke.width_mm());
        page.setLineCapStyle(stroke.dash_mm().isEmpty() ? 1 : 0);
        float[] dash = new float[stroke.dash_mm().size()];
        for (int i = 0; i < dash.length; i++) {
            dash[i] = stroke.dash_mm().get(i).floatValue();
        }
        page.setLineDashPattern(dash, 0);
        page.stroke();
    }

    private void fill(Ink ink) throws IOException {
        page.setNonStrokingColor(ink.red(), ink.green(), ink.blue());
        page.fill();
    }

    private void moveTo(Point point) throws IOException {
        page.moveTo((float) point.x_mm(), (float) point.y_mm());
    }

    private void lineTo(Point point) throws IOException {
        page.lineTo((float) point.x_mm(), (float) point.y_mm());
    }

    private void curveTo(Point first, Point second, Point end) throws IOException {
        page.curveTo(
                (float) first.x_mm(),
                (float) first.y_mm(),
                (float) second.x_mm(),
                (float) second.y_mm(),
                (float) end.x_mm(),
                (float) end.y_mm());
    }
}
