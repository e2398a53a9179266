package afterlength.workshop.retouch;

import afterlength.craft.colour.Lab;
import afterlength.craft.colour.Srgb;
import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Card;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;

/** Painted photographs of a line in grained varnish, with and without a card in them. */
final class LinedPicture {
    static final double PX_MM = 12;
    static final Pixel FROM = new Pixel(150, 300);
    static final Pixel TO = new Pixel(630, 300);
    static final Pixel UNTOUCHED_FROM = new Pixel(150, 520);
    static final Pixel UNTOUCHED_TO = new Pixel(630, 520);

    private static final Scene SCENE = Scene.of(Card.POCKET, 3200, Scene.Camera.over(Card.POCKET, 8, 70, 190));

    private LinedPicture() {}

    /** A line 40 mm long and 0.4 mm broad, some L* darker than its varnish. */
    static byte[] plain(double darker, double grain) throws IOException {
        BufferedImage picture = new BufferedImage(780, 640, BufferedImage.TYPE_INT_RGB);
        SplittableRandom random = new SplittableRandom(11);
        for (int y = 0; y < picture.getHeight(); y++) {
            double stripe = y % 4 == 0 ? random.nextDouble(-grain, grain + 1e-9) : 0;
            for (int x = 0; x < picture.getWidth(); x++) {
                boolean onLine = Math.abs(y + 0.5 - FROM.y()) < 0.2 * PX_MM && x >= FROM.x() && x < TO.x();
                Lab colour = new Lab(42 + stripe - (onLine ? darker : 0), 18, 36);
                picture.setRGB(x, y, Integer.parseInt(Srgb.of(colour).hex().substring(1), 16));
            }
        }
        return png(picture);
    }

    /** The pocket card on an even bench, with a line drawn 30 mm beside it. */
    static byte[] withCard(int grey) throws IOException {
        BufferedImage rendered = Renderer.render(SCENE, 5);
        BufferedImage picture =
                new BufferedImage(rendered.getWidth(), rendered.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = picture.createGraphics();
        brush.drawImage(rendered, 0, 0, null);
        brush.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        brush.setStroke(new BasicStroke(5, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
        brush.setColor(new Color(grey, grey, grey));
        Pixel from = onCard(90, 20);
        Pixel to = onCard(90, 60);
        brush.draw(new Line2D.Double(from.x(), from.y(), to.x(), to.y()));
        brush.dispose();
        return png(picture);
    }

    static Pixel onCard(double x_mm, double y_mm) {
        return SCENE.view().pixel(Point.of(x_mm, y_mm), 0);
    }

    private static byte[] png(BufferedImage picture) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(picture, "png", bytes);
        return bytes.toByteArray();
    }
}
