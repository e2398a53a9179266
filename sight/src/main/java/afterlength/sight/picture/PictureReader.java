package afterlength.sight.picture;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Reads every pixel of a picture, after {@link PictureCheck} has read its header and found it fit: a file that claims more
 * pixels than the memory holds is refused while it is still a few hundred bytes.
 */
public final class PictureReader {
    private PictureReader() {}

    public static PictureAnswer read(PictureFile file) {
        PictureCheck check = PictureCheck.of(file);
        if (check instanceof PictureCheck.Refused refused) {
            return new PictureRefused(refused.reason());
        }
        try {
            BufferedImage asLaid = decoded(file.bytes());
            CameraTurn turn = CameraTurn.of(file.bytes());
            return new Picture(turn.upright(asLaid), CameraNotes.of(file.bytes()), turn);
        } catch (IOException unreadable) {
            return new PictureRefused("The picture cannot be decoded (" + unreadable.getMessage()
                    + "). Open it in a picture program and save it as JPEG in ordinary RGB colours.");
        }
    }

    private static BufferedImage decoded(byte[] bytes) throws IOException {
        try (ImageInputStream stream = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                throw new IOException("no reader for these bytes");
            }
            return decoded(readers.next(), stream);
        } catch (IllegalArgumentException | IndexOutOfBoundsException | NegativeArraySizeException damaged) {
            throw new IOException("the data make no sense", damaged);
        }
    }

    private static BufferedImage decoded(ImageReader reader, ImageInputStream stream) throws IOException {
        try {
            reader.setInput(stream, true, true);
            return plain(reader.read(0));
        } finally {
            reader.dispose();
        }
    }

    /** Three bytes a pixel in sRGB; what the decoder gave that way already is kept as it is. */
    private static BufferedImage plain(BufferedImage decoded) {
        if (decoded.getType() == BufferedImage.TYPE_3BYTE_BGR) {
            return decoded;
        }
        BufferedImage plain = new BufferedImage(decoded.getWidth(), decoded.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D brush = plain.createGraphics();
        brush.drawImage(decoded, 0, 0, Color.WHITE, null);
        brush.dispose();
        return plain;
    }
}
