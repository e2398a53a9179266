package afterlength.start;

import afterlength.sight.card.Card;
import afterlength.sight.card.Rectangle;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/** A card as a scanner would see it: from straight above, so many pixels to the millimetre, without lens or light. */
final class CardPhoto {
    static final double PX_MM = 6;
    static final double MARGIN_PX = 100;

    private CardPhoto() {}

    static byte[] png(Card card) {
        int width = (int) (card.width_mm() * PX_MM + 4 * MARGIN_PX);
        int height = (int) (card.height_mm() * PX_MM + 2 * MARGIN_PX);
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D brush = picture.createGraphics();
        brush.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        brush.setColor(Color.LIGHT_GRAY);
        brush.fillRect(0, 0, width, height);
        brush.transform(new AffineTransform(PX_MM, 0, 0, PX_MM, MARGIN_PX, MARGIN_PX));
        brush.setColor(Color.WHITE);
        brush.fill(new Rectangle2D.Double(0, 0, card.width_mm(), card.height_mm()));
        brush.setColor(Color.BLACK);
        for (Rectangle square : card.squares()) {
            brush.fill(
                    new Rectangle2D.Double(square.left_mm(), square.top_mm(), square.width_mm(), square.height_mm()));
        }
        brush.dispose();
        return written(soft(picture));
    }

    /** No lens draws a line sharper than about a pixel, and the finder expects none that does. */
    private static BufferedImage soft(BufferedImage sharp) {
        float[] bell = {1 / 16f, 2 / 16f, 1 / 16f, 2 / 16f, 4 / 16f, 2 / 16f, 1 / 16f, 2 / 16f, 1 / 16f};
        return new ConvolveOp(new Kernel(3, 3, bell), ConvolveOp.EDGE_NO_OP, null).filter(sharp, null);
    }

    private static byte[] written(BufferedImage picture) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(picture, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }
}
