package afterlength.workshop.examination;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures made on the spot: red above, blue below, so that a turn can be seen. */
final class TestPictures {
    static final Color ABOVE = new Color(200, 40, 30);
    static final Color BELOW = new Color(30, 40, 200);

    private TestPictures() {}

    static byte[] of(String format, int width, int height) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = image.createGraphics();
        brush.setColor(ABOVE);
        brush.fillRect(0, 0, width, height / 2);
        brush.setColor(BELOW);
        brush.fillRect(0, height / 2, width, height);
        brush.dispose();
        return written(format, image);
    }

    static byte[] jpeg(int width, int height) {
        return of("jpg", width, height);
    }

    static byte[] written(String format, BufferedImage image) {
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            if (!ImageIO.write(image, format, bytes)) {
                throw new IllegalStateException("no writer for " + format);
            }
            return bytes.toByteArray();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** The JPEG with a camera's note of its turn and of the place, 48° 8' north, put behind its first mark. */
    static byte[] withCameraNotes(byte[] jpeg, int orientation) {
        byte[] tiff = cameraNotes(orientation);
        ByteBuffer with = ByteBuffer.allocate(jpeg.length + 10 + tiff.length);
        with.put(jpeg, 0, 2).putShort((short) 0xFFE1).putShort((short) (8 + tiff.length));
        with.put("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1)).put(tiff).put(jpeg, 2, jpeg.length - 2);
        return with.array();
    }

    /** A TIFF block of two directories: the picture's (orientation, pointer) and the place's (reference, latitude). */
    private static byte[] cameraNotes(int orientation) {
        ByteBuffer tiff = ByteBuffer.allocate(92);
        tiff.put("MM\0*".getBytes(StandardCharsets.ISO_8859_1)).putInt(8);
        tiff.putShort((short) 2);
        entry(tiff, 0x0112, 3, 1, orientation << 16);
        entry(tiff, 0x8825, 4, 1, 38);
        tiff.putInt(0);
        tiff.putShort((short) 2);
        entry(tiff, 1, 2, 2, 'N' << 24);
        entry(tiff, 2, 5, 3, 68);
        tiff.putInt(0);
        tiff.putInt(48).putInt(1).putInt(8).putInt(1).putInt(0).putInt(1);
        return tiff.array();
    }

    private static void entry(ByteBuffer tiff, int tag, int kind, int count, int value) {
        tiff.putShort((short) tag).putShort((short) kind).putInt(count).putInt(value);
    }

    /** A PNG of some hundred bytes that claims to be as large as it is told. */
    static byte[] claimingPng(int width, int height) {
        ByteBuffer png = ByteBuffer.allocate(8 + 25 + 12);
        png.put("\u0089PNG\r\n\u001a\n".getBytes(StandardCharsets.ISO_8859_1));
        ByteBuffer header = ByteBuffer.allocate(17);
        header.put("IHDR".getBytes(StandardCharsets.ISO_8859_1)).putInt(width).putInt(height);
        header.put((byte) 8).put((byte) 6).put((byte) 0).put((byte) 0).put((byte) 0);
        chunk(png, header.array());
        chunk(png, "IEND".getBytes(StandardCharsets.ISO_8859_1));
        return png.array();
    }

    private static void chunk(ByteBuffer png, byte[] nameAndData) {
        CRC32 sum = new CRC32();
        sum.update(nameAndData);
        png.putInt(nameAndData.length - 4).put(nameAndData).putInt((int) sum.getValue());
    }
}
