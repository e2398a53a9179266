package afterlength.sight.rendered;

import afterlength.sight.picture.CameraNotes;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Writes pictures as JPEG, and a camera's notes into them. */
public final class Jpeg {
    private Jpeg() {}

    public static byte[] of(BufferedImage picture, double quality) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(bytes)) {
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality((float) quality);
            writer.setOutput(stream);
            writer.write(null, new IIOImage(picture, null, null), how);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }

    /** The file with all that a camera notes of itself, and how it was held. */
    public static byte[] noted(byte[] jpeg, CameraNotes notes, int orientation) {
        return with(jpeg, ExifNotes.of(notes, orientation));
    }

    /** The file with a camera's notes behind its first mark: how it was held, focal length, size as taken. */
    public static byte[] noted(byte[] jpeg, int orientation, int focal35_mm, int width_px, int height_px) {
        return with(jpeg, notes(orientation, focal35_mm, width_px, height_px));
    }

    private static byte[] with(byte[] jpeg, byte[] tiff) {
        ByteBuffer with = ByteBuffer.allocate(jpeg.length + 10 + tiff.length);
        with.put(jpeg, 0, 2).putShort((short) 0xFFE1).putShort((short) (8 + tiff.length));
        with.put("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1)).put(tiff).put(jpeg, 2, jpeg.length - 2);
        return with.array();
    }

    private static byte[] notes(int orientation, int focal35_mm, int width_px, int height_px) {
        ByteBuffer tiff = ByteBuffer.allocate(8 + 2 + 24 + 4 + 2 + 36 + 4);
        tiff.put("MM\0*".getBytes(StandardCharsets.ISO_8859_1)).putInt(8);
        tiff.putShort((short) 2);
        entry(tiff, 0x0112, 3, orientation << 16);
        entry(tiff, 0x8769, 4, 38);
        tiff.putInt(0);
        tiff.putShort((short) 3);
        entry(tiff, 0xA002, 4, width_px);
        entry(tiff, 0xA003, 4, height_px);
        entry(tiff, 0xA405, 3, focal35_mm << 16);
        tiff.putInt(0);
        return tiff.array();
    }

    private static void entry(ByteBuffer tiff, int tag, int kind, int value) {
        tiff.putShort((short) tag).putShort((short) kind).putInt(1).putInt(value);
    }
}
