package afterlength.sight.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.Metadata;
import com.drew.metadata.exif.ExifIFD0Directory;
import com.drew.metadata.exif.ExifSubIFDDirectory;
import com.drew.metadata.exif.GpsDirectory;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What goes out with a picture, looked at with a general reader of camera notes and byte by byte. */
class OutgoingPictureTest {
    private static final String OWNER = "Clementine Vantongeren";

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void pixelsAndLensGoOutPlaceAndNamesDoNot(boolean littleEndian) throws Exception {
        byte[] original = noted(drawn("jpg"), littleEndian ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        assertThat(notesOf(original).getFirstDirectoryOfType(GpsDirectory.class).getGeoLocation())
                .isNotNull();
        byte[] out = OutgoingPicture.of(original);
        Metadata notes = notesOf(out);
        assertThat(notes.getFirstDirectoryOfType(GpsDirectory.class)).isNull();
        assertThat(new String(out, StandardCharsets.ISO_8859_1))
                .doesNotContain(OWNER)
                .doesNotContain("in the kitchen");
        ExifIFD0Directory picture = notes.getFirstDirectoryOfType(ExifIFD0Directory.class);
        assertThat(picture.getInt(ExifIFD0Directory.TAG_ORIENTATION)).isEqualTo(6);
        assertThat(picture.getString(ExifIFD0Directory.TAG_MAKE)).isEqualTo("Invented Cameras");
        ExifSubIFDDirectory exposure = notes.getFirstDirectoryOfType(ExifSubIFDDirectory.class);
        assertThat(exposure.getDouble(ExifSubIFDDirectory.TAG_FOCAL_LENGTH)).isEqualTo(4.25);
        assertThat(exposure.getString(ExifSubIFDDirectory.TAG_DATETIME_ORIGINAL))
                .isEqualTo("2026:03:02 09:15:00");
        assertThat(pixels(out)).isEqualTo(pixels(original));
    }

    @Test
    void goingOutTwiceChangesNothingMore() throws Exception {
        byte[] once = OutgoingPicture.of(noted(drawn("jpg"), ByteOrder.BIG_ENDIAN));
        assertThat(OutgoingPicture.of(once)).isEqualTo(once);
    }

    @Test
    void aPngKeepsItsPixelsAndLosesItsTexts() throws Exception {
        byte[] png = drawn("png");
        byte[] original = withChunk(png, "tEXtAuthor\0" + OWNER);
        byte[] out = OutgoingPicture.of(original);
        assertThat(new String(out, StandardCharsets.ISO_8859_1)).doesNotContain(OWNER);
        assertThat(pixels(out)).isEqualTo(pixels(original));
    }

    @Test
    void halfAPictureIsNotHandedOut() throws Exception {
        byte[] jpeg = drawn("jpg");
        assertThatThrownBy(() -> OutgoingPicture.of(java.util.Arrays.copyOf(jpeg, jpeg.length - 40)))
                .hasMessage("the picture is not whole");
        assertThatThrownBy(() -> OutgoingPicture.of(new byte[] {1, 2, 3})).isInstanceOf(IllegalArgumentException.class);
    }

    /** Broken notes never let a place through, and never stop the picture. Seeds are printed by the message. */
    @Test
    void damagedNotesStayBehind() throws Exception {
        byte[] whole = noted(drawn("jpg"), ByteOrder.BIG_ENDIAN);
        for (long seed = 0; seed < 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            byte[] damaged = whole.clone();
            for (int n = 0; n < 6; n++) {
                damaged[30 + random.nextInt(240)] = (byte) random.nextInt(256);
            }
            byte[] out = OutgoingPicture.of(damaged);
            assertThat(notesOf(out).getFirstDirectoryOfType(GpsDirectory.class))
                    .as("seed %d", seed)
                    .isNull();
            assertThat(pixels(out)).as("seed %d", seed).isEqualTo(pixels(whole));
        }
    }

    private static Metadata notesOf(byte[] picture) throws Exception {
        return ImageMetadataReader.readMetadata(new ByteArrayInputStream(picture));
    }

    private static int[] pixels(byte[] picture) throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture));
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    private static byte[] drawn(String format) throws Exception {
        BufferedImage image = new BufferedImage(64, 48, BufferedImage.TYPE_INT_RGB);
        SplittableRandom random = new SplittableRandom(7);
        for (int at = 0; at < 64 * 48; at++) {
            image.setRGB(at % 64, at / 64, random.nextInt(0x1000000));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    /** The picture with notes of turn, maker, artist, lens, hour and place, a comment, and words behind its end. */
    private static byte[] noted(byte[] jpeg, ByteOrder order) {
        ByteBuffer tiff = ByteBuffer.allocate(400).order(order);
        tiff.put((order == ByteOrder.BIG_ENDIAN ? "MM" : "II").getBytes(StandardCharsets.ISO_8859_1));
        tiff.putShort((short) 42).putInt(8);
        tiff.putShort((short) 5);
        entry(tiff, 0x010F, 2, 17, 100);
        tiff.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) 6)
                .putShort((short) 0);
        entry(tiff, 0x013B, 2, 23, 120);
        entry(tiff, 0x8769, 4, 1, 160);
        entry(tiff, 0x8825, 4, 1, 220);
        tiff.putInt(0);
        tiff.position(100).put("Invented Cameras\0".getBytes(StandardCharsets.ISO_8859_1));
        tiff.position(120).put((OWNER + "\0").getBytes(StandardCharsets.ISO_8859_1));
        tiff.position(160).putShort((short) 2);
        entry(tiff, 0x9003, 2, 20, 190);
        entry(tiff, 0x920A, 5, 1, 210);
        tiff.putInt(0);
        tiff.position(190).put("2026:03:02 09:15:00\0".getBytes(StandardCharsets.ISO_8859_1));
        tiff.position(210).putInt(17).putInt(4);
        tiff.position(220).putShort((short) 4);
        tiff.putShort((short) 1).putShort((short) 2).putInt(2).put((byte) 'N').put(new byte[3]);
        entry(tiff, 2, 5, 3, 290);
        tiff.putShort((short) 3).putShort((short) 2).putInt(2).put((byte) 'E').put(new byte[3]);
        entry(tiff, 4, 5, 3, 320);
        tiff.putInt(0);
        tiff.position(290).putInt(48).putInt(1).putInt(8).putInt(1).putInt(3).putInt(1);
        tiff.position(320).putInt(11).putInt(1).putInt(34).putInt(1).putInt(7).putInt(1);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        segment(out, 0xE1, ("Exif\0\0" + new String(tiff.array(), StandardCharsets.ISO_8859_1)));
        segment(out, 0xE1, "http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>in the kitchen of " + OWNER + "</x:xmpmeta>");
        segment(out, 0xED, "Photoshop 3.0\0" + OWNER);
        segment(out, 0xFE, "taken in the kitchen of " + OWNER);
        out.write(jpeg, 2, jpeg.length - 2);
        out.writeBytes(("a film with its place, in the kitchen of " + OWNER).getBytes(StandardCharsets.ISO_8859_1));
        return out.toByteArray();
    }

    private static void entry(ByteBuffer tiff, int tag, int kind, int count, int value) {
        tiff.putShort((short) tag).putShort((short) kind).putInt(count).putInt(value);
    }

    private static void segment(ByteArrayOutputStream out, int marker, String data) {
        byte[] bytes = data.getBytes(StandardCharsets.ISO_8859_1);
        out.writeBytes(ByteBuffer.allocate(4)
                .putShort((short) (0xFF00 | marker))
                .putShort((short) (2 + bytes.length))
                .array());
        out.writeBytes(bytes);
    }

    private static byte[] withChunk(byte[] png, String nameAndData) {
        byte[] named = nameAndData.getBytes(StandardCharsets.ISO_8859_1);
        CRC32 sum = new CRC32();
        sum.update(named);
        ByteBuffer with = ByteBuffer.allocate(png.length + 8 + named.length);
        with.put(png, 0, 33).putInt(named.length - 4).put(named).putInt((int) sum.getValue());
        return with.put(png, 33, png.length - 33).array();
    }
}
