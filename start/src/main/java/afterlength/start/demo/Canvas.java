package afterlength.start.demo;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.awt.image.DataBufferInt;

/** The picture being painted, and the ways paint gets on it. Shapes are in millimetres of the frame. */
final class Canvas {
    private final Frame frame;
    private final BufferedImage image;
    private final int[] pixels;
    private final Graphics2D graphics;
    private final AffineTransform toMm;

    Canvas(Frame frame) {
        this.frame = frame;
        this.toMm = frame.toMm();
        this.image = new BufferedImage(frame.width(), frame.height(), BufferedImage.TYPE_INT_RGB);
        this.pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        this.graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    }

    Frame frame() {
        return frame;
    }

    BufferedImage image() {
        return image;
    }

    int[] pixels() {
        return pixels;
    }

    double pixel_mm() {
        return 1 / frame.pixelsPerMm();
    }

    /** Plain paint, in the frame's millimetres. */
    void fill(Shape shape, Paint paint) {
        graphics.setPaint(paint);
        AffineTransform before = graphics.getTransform();
        graphics.transform(frame.toPixels());
        graphics.fill(shape);
        graphics.setTransform(before);
    }

    void stroke(Shape line, double breadth_mm, Color colour) {
        BasicStroke pen = new BasicStroke((float) breadth_mm, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        fill(pen.createStrokedShape(line), colour);
    }

    /** Limits what follows to the inside of a shape, until {@link #unclip()}. */
    void clip(Shape shape) {
        graphics.setClip(frame.toPixels().createTransformedShape(shape));
    }

    void unclip() {
        graphics.setClip(null);
    }

    /** Paints every pixel inside the shape with its own colour; {@code paint} gives the pixel's sRGB number. */
    void shade(Shape shape, PixelPaint paint) {
        Shape inPixels = frame.toPixels().createTransformedShape(shape);
        Rectangle box = inPixels.getBounds();
        box.grow(1, 1);
        Rectangle seen = box.intersection(new Rectangle(frame.width(), frame.height()));
        if (seen.isEmpty()) {
            return;
        }
        byte[] coverage = coverage(inPixels, seen);
        for (int row = 0; row < seen.height; row++) {
            shadeRow(seen, row, coverage, paint);
        }
    }

    private void shadeRow(Rectangle seen, int row, byte[] coverage, PixelPaint paint) {
        int y = seen.y + row;
        Point2D.Double start = toMm(0.5, y + 0.5);
        Point2D.Double next = toMm(1.5, y + 0.5);
        Point2D.Double step = new Point2D.Double(next.x - start.x, next.y - start.y);
        for (int column = 0; column < seen.width; column++) {
            int share = coverage[row * seen.width + column] & 0xff;
            if (share > 0) {
                int x = seen.x + column;
                int at = y * frame.width() + x;
                pixels[at] = Rgb.mixed(pixels[at], paint.at(start.x + x * step.x, start.y + x * step.y), share);
            }
        }
    }

    private Point2D.Double toMm(double column, double row) {
        Point2D.Double place = new Point2D.Double();
        toMm.transform(new Point2D.Double(column, row), place);
        return place;
    }

    private static byte[] coverage(Shape inPixels, Rectangle seen) {
        BufferedImage mask = new BufferedImage(seen.width, seen.height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D pen = mask.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        pen.translate(-seen.x, -seen.y);
        pen.setColor(Color.WHITE);
        pen.fill(inPixels);
        pen.dispose();
        return ((DataBufferByte) mask.getRaster().getDataBuffer()).getData();
    }

    /** A soft shadow of a shape, moved to the lower right, blurred, and not darker than the strength. */
    void shadow(Shape shape, double right_mm, double down_mm, double blur_mm, double strength) {
        new SoftShadow(frame, shape, right_mm, down_mm, blur_mm).dropOn(graphics, strength);
    }

    Graphics2D graphics() {
        return graphics;
    }
}
