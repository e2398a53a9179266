package afterlength.workshop.examination;

import afterlength.sight.camera.Pixel;
import afterlength.sight.measure.MarkKind;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import javax.imageio.ImageIO;
import net.coobird.thumbnailator.Thumbnails;

/**
 * The small copy of a photograph with its marks drawn on it, each with its number, for papers. A light line in a dark one is seen on
 * any varnish, in colour and in grey.
 */
final class MarkedPicture {
    private static final Color LIGHT = new Color(0xFFF4DD);
    private static final Color DARK = new Color(0x2A221C);
    private static final double QUALITY = 0.9;
    /** Shares of the longer edge. */
    private static final double LINE = 0.0028;

    private static final double DOT = 0.006;
    private static final double LETTER = 0.026;

    private final Graphics2D brush;
    private final double scale;
    private final double edge_px;

    private MarkedPicture(BufferedImage picture, double scale) {
        this.scale = scale;
        edge_px = Math.max(picture.getWidth(), picture.getHeight());
        brush = picture.createGraphics();
        brush.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        brush.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        brush.setFont(new Font(Font.SANS_SERIF, Font.BOLD, (int) Math.round(LETTER * edge_px)));
    }

    /** The same picture when nothing is marked on it. */
    static byte[] of(byte[] small, Photograph photograph, List<DrawnMark> marks) {
        if (marks.isEmpty()) {
            return small;
        }
        try {
            BufferedImage picture = ImageIO.read(new ByteArrayInputStream(small));
            MarkedPicture marked = new MarkedPicture(picture, picture.getWidth() / (double) photograph.widthPx());
            marks.forEach(marked::draw);
            marked.brush.dispose();
            ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
            Thumbnails.of(picture)
                    .scale(1)
                    .outputFormat("jpg")
                    .outputQuality(QUALITY)
                    .toOutputStream(jpeg);
            return jpeg.toByteArray();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private void draw(DrawnMark mark) {
        List<Pixel> points = mark.points();
        if (points.size() > 1) {
            drawLine(path(points, mark.tool().kind() == MarkKind.AREA));
        }
        Pixel first = points.get(0);
        double x = first.x() * scale;
        double y = first.y() * scale;
        drawDot(x, y);
        drawNumber(Long.toString(mark.id()), x, y);
    }

    private Path2D path(List<Pixel> points, boolean closed) {
        Path2D path = new Path2D.Double();
        path.moveTo(points.get(0).x() * scale, points.get(0).y() * scale);
        points.stream().skip(1).forEach(point -> path.lineTo(point.x() * scale, point.y() * scale));
        if (closed) {
            path.closePath();
        }
        return path;
    }

    private void drawLine(Path2D path) {
        stroke(path, 2.4 * LINE * edge_px, DARK);
        stroke(path, LINE * edge_px, LIGHT);
    }

    private void stroke(Shape shape, double broad_px, Color colour) {
        brush.setStroke(new BasicStroke((float) broad_px, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        brush.setColor(colour);
        brush.draw(shape);
    }

    private void drawDot(double x, double y) {
        double radius = DOT * edge_px;
        Shape dot = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        brush.setColor(DARK);
        brush.fill(dot);
        stroke(dot, LINE * edge_px / 2, LIGHT);
    }

    /** Beside the dot, on whichever side there is room. */
    private void drawNumber(String number, double x, double y) {
        double broad = brush.getFontMetrics().stringWidth(number);
        double high = LETTER * edge_px;
        double left =
                x + 2 * DOT * edge_px + broad < edge_px ? x + 1.6 * DOT * edge_px : x - 1.6 * DOT * edge_px - broad;
        double base = y - DOT * edge_px > high ? y - DOT * edge_px : y + DOT * edge_px + high;
        Shape letters = brush.getFont()
                .createGlyphVector(brush.getFontRenderContext(), number)
                .getOutline((float) left, (float) base);
        stroke(letters, 2.4 * LINE * edge_px, DARK);
        brush.setColor(LIGHT);
        brush.fill(letters);
    }
}
