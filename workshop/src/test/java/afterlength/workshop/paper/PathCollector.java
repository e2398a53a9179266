package afterlength.workshop.paper;

import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.jspecify.annotations.Nullable;

/** Follows the drawing operators of a page and keeps the straight pieces of what is stroked. */
final class PathCollector extends PDFGraphicsStreamEngine {
    private final List<MeasuredLine> lines = new ArrayList<>();
    private final List<Rectangle2D> areas = new ArrayList<>();
    private final GeneralPath path = new GeneralPath();

    private PathCollector(PDPage page) {
        super(page);
    }

    static List<MeasuredLine> lines(PDPage page) {
        PathCollector collector = new PathCollector(page);
        try {
            collector.processPage(page);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return collector.lines;
    }

    /** The box of every path that is filled, in millimetres from the lower left corner. */
    static List<Rectangle2D> areas(PDPage page) {
        PathCollector collector = new PathCollector(page);
        try {
            collector.processPage(page);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        return collector.areas;
    }

    private void keepArea() {
        Rectangle2D box = path.getBounds2D();
        double k = PdfPen.POINTS_PER_MM;
        areas.add(new Rectangle2D.Double(box.getX() / k, box.getY() / k, box.getWidth() / k, box.getHeight() / k));
    }

    private void keepLines() {
        double width_mm = transformWidth(getGraphicsState().getLineWidth()) / PdfPen.POINTS_PER_MM;
        double[] at = new double[6];
        double[] last = new double[2];
        double[] first = new double[2];
        for (PathIterator pieces = path.getPathIterator(null); !pieces.isDone(); pieces.next()) {
            int kind = pieces.currentSegment(at);
            double[] end = kind == PathIterator.SEG_CUBICTO ? new double[] {at[4], at[5]} : new double[] {at[0], at[1]};
            if (kind == PathIterator.SEG_MOVETO) {
                first = end;
            } else if (kind == PathIterator.SEG_CLOSE) {
                end = first;
            }
            if (kind == PathIterator.SEG_LINETO || kind == PathIterator.SEG_CLOSE) {
                keep(last, end, width_mm);
            }
            last = end;
        }
    }

    private void keep(double[] from, double[] to, double width_mm) {
        double k = PdfPen.POINTS_PER_MM;
        lines.add(new MeasuredLine(from[0] / k, from[1] / k, to[0] / k, to[1] / k, width_mm));
    }

    @Override
    public void strokePath() {
        keepLines();
        path.reset();
    }

    @Override
    public void fillPath(int windingRule) {
        keepArea();
        path.reset();
    }

    @Override
    public void fillAndStrokePath(int windingRule) {
        strokePath();
    }

    @Override
    public void endPath() {
        path.reset();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        path.moveTo(p0.getX(), p0.getY());
        path.lineTo(p1.getX(), p1.getY());
        path.lineTo(p2.getX(), p2.getY());
        path.lineTo(p3.getX(), p3.getY());
        path.closePath();
    }

    @Override
    public @Nullable Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void clip(int windingRule) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void shadingFill(COSName shading) {}
}
