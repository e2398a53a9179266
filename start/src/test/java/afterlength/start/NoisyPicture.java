package afterlength.start;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;

/** A JPEG of nothing but noise, large for its pixels and never the same twice. */
final class NoisyPicture {
    private NoisyPicture() {}

    static byte[] of(int width_px, int height_px, SplittableRandom random) throws IOException {
        BufferedImage noise = new BufferedImage(width_px, height_px, BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < height_px; y++) {
            for (int x = 0; x < width_px; x++) {
                noise.setRGB(x, y, random.nextInt());
            }
        }
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(noise, "jpg", jpeg);
        return jpeg.toByteArray();
    }
}
