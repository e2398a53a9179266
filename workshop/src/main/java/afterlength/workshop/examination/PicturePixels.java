package afterlength.workshop.examination;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Decodes a picture in sRGB without its camera data. Of a large picture only every second, third … pixel of every such line is
 * kept, so that the longest edge stays below twice what is asked for and the memory below some 70 MB.
 */
final class PicturePixels {
    /** Twice the largest picture that is derived: averaging the rest of the way keeps fine grain from flickering. */
    private static final int ENOUGH_PX = 2 * SmallPictures.PAPER_PX;

    private PicturePixels() {}

    /**
     * The pixels as they lie in the file.
     *
     * @throws IOException when they cannot be decoded
     */
    static BufferedImage read(byte[] bytes) throws IOException {
        try (ImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw new IOException("no reader for these bytes");
            }
            return read(readers.next(), stream);
        } catch (IllegalArgumentException | IndexOutOfBoundsException | NegativeArraySizeException damaged) {
            throw new IOException("the data make no sense", damaged);
        }
    }

    private static BufferedImage read(ImageReader reader, ImageInputStream stream) throws IOException {
        try {
            reader.setInput(stream, true, true);
            int longest_px = Math.max(reader.getWidth(0), reader.getHeight(0));
            int step = Math.max(1, longest_px / ENOUGH_PX);
            ImageReadParam every = reader.getDefaultReadParam();
            every.setSourceSubsampling(step, step, 0, 0);
            return onWhite(reader.read(0, every));
        } finally {
            reader.dispose();
        }
    }

    /** Plain sRGB, whatever the file's own colours; what is transparent becomes white. */
    private static BufferedImage onWhite(BufferedImage decoded) {
        BufferedImage plain = new BufferedImage(decoded.getWidth(), decoded.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = plain.createGraphics();
        brush.drawImage(decoded, 0, 0, Color.WHITE, null);
        brush.dispose();
        return plain;
    }
}
