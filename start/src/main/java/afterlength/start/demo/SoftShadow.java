package afterlength.start.demo;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;

/** A blurred dark image of a shape. It is made at a fraction of the picture's size, as nobody sees fine detail in a shadow. */
final class SoftShadow {
    private static final int WARM_BLACK = 0x1a0f08;

    private final Rectangle box;
    private final int shrink;
    private final BufferedImage image;

    SoftShadow(Frame frame, Shape shape, double right_mm, double down_mm, double blur_mm) {
        AffineTransform place = frame.toPixels();
        place.preConcatenate(
                AffineTransform.getTranslateInstance(right_mm * frame.pixelsPerMm(), down_mm * frame.pixelsPerMm()));
        Shape moved = place.createTransformedShape(shape);
        int blur = Math.max(1, (int) Math.round(blur_mm * frame.pixelsPerMm()));
        this.shrink = Math.max(1, blur / 5);
        Rectangle grown = moved.getBounds();
        grown.grow(2 * blur + 2 * shrink, 2 * blur + 2 * shrink);
        Rectangle reach = new Rectangle(frame.width(), frame.height());
        reach.grow(2 * blur, 2 * blur);
        this.box = grown.intersection(reach);
        this.image = box.isEmpty() ? new BufferedImage(1, 1, BufferedImage.TYPE_INT_ARGB) : drawn(moved);
        int radius = Math.max(1, blur / shrink / 2);
        for (int i = 0; i < 3; i++) {
            blur(radius);
        }
    }

    void dropOn(Graphics2D graphics, double strength) {
        Graphics2D pen = (Graphics2D) graphics.create();
        pen.setTransform(new AffineTransform());
        pen.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) strength));
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.drawImage(image, box.x, box.y, image.getWidth() * shrink, image.getHeight() * shrink, null);
        pen.dispose();
    }

    private BufferedImage drawn(Shape moved) {
        int width = box.width / shrink + 1;
        int height = box.height / shrink + 1;
        BufferedImage small = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = small.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.scale(1.0 / shrink, 1.0 / shrink);
        pen.translate(-box.x, -box.y);
        pen.setColor(new Color(WARM_BLACK));
        pen.fill(moved);
        pen.dispose();
        return small;
    }

    private void blur(int radius) {
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        int width = image.getWidth();
        int height = image.getHeight();
        int[] line = new int[Math.max(width, height)];
        for (int row = 0; row < height; row++) {
            blurLine(pixels, row * width, 1, width, radius, line);
        }
        for (int column = 0; column < width; column++) {
            blurLine(pixels, column, width, height, radius, line);
        }
    }

    /** Running mean of the opacities along one line; the colour stays. */
    private static void blurLine(int[] pixels, int start, int step, int count, int radius, int[] line) {
        for (int i = 0; i < count; i++) {
            line[i] = pixels[start + i * step] >>> 24;
        }
        int sum = 0;
        for (int i = -radius; i < count; i++) {
            sum += i + radius < count ? line[i + radius] : 0;
            sum -= i - radius - 1 >= 0 ? line[i - radius - 1] : 0;
            if (i >= 0) {
                int opacity = sum / (2 * radius + 1);
                pixels[start + i * step] = (opacity << 24) | WARM_BLACK;
            }
        }
    }
}
