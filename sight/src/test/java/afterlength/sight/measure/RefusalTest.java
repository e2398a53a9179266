package afterlength.sight.measure;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Card;
import afterlength.sight.rendered.Jpeg;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** A picture that cannot be trusted is refused with the whole reason. */
class RefusalTest {
    private static final int WIDTH_PX = 1600;
    private static final Scene SCENE = Scene.of(Card.POCKET, WIDTH_PX, Scene.Camera.over(Card.POCKET, 20, 70, 260));
    private static final BufferedImage PICTURE = Renderer.render(SCENE, 3);

    private static final String NO_CARD =
            "No card was found in the picture. Lay a printed body card or pocket card flat and wholly into the picture and take the"
                    + " picture again.";

    private static byte[] jpeg(BufferedImage picture) {
        return Jpeg.of(picture, 0.92);
    }

    /** The picture with everything but a part of it painted over. */
    private static BufferedImage covered(int x, int y, int width, int height) {
        BufferedImage copy = new BufferedImage(PICTURE.getWidth(), PICTURE.getHeight(), PICTURE.getType());
        Graphics2D brush = copy.createGraphics();
        brush.drawImage(PICTURE, 0, 0, null);
        brush.setColor(Color.GRAY);
        brush.fillRect(x, y, width, height);
        brush.dispose();
        return copy;
    }

    @Test
    void noCard() {
        assertThat(Taken.refusal(jpeg(covered(0, 0, WIDTH_PX, WIDTH_PX)), "pocket"))
                .isEqualTo(NO_CARD);
    }

    @Test
    void aTinyPictureHasNoCard() {
        assertThat(Taken.refusal(jpeg(new BufferedImage(3, 2, BufferedImage.TYPE_3BYTE_BGR)), "pocket"))
                .isEqualTo(NO_CARD);
    }

    @Test
    void anotherCardThanNamed() {
        assertThat(Taken.refusal(jpeg(PICTURE), "body"))
                .isEqualTo(
                        "The picture shows a pocket card; a body card was named. Name the card that lies in the picture.");
    }

    @Test
    void cardCut() {
        Pixel cut = SCENE.view().pixel(Point.of(30, 40), 0);
        BufferedImage part = PICTURE.getSubimage((int) cut.x(), 0, WIDTH_PX - (int) cut.x(), PICTURE.getHeight());
        BufferedImage alone = new BufferedImage(part.getWidth(), part.getHeight(), PICTURE.getType());
        alone.getGraphics().drawImage(part, 0, 0, null);
        assertThat(Taken.refusal(jpeg(alone), "pocket"))
                .isEqualTo("The card is cut by the edge of the picture: 20 of its 40 corners lie outside. Bring the"
                        + " whole card into the picture and take the picture again.");
    }

    @Test
    void blurred() {
        Scene near = Scene.of(Card.POCKET, WIDTH_PX, Scene.Camera.over(Card.POCKET, 20, 70, 150));
        assertThat(Taken.refusal(Renderer.jpeg(near.blurred(3.6), 3), "pocket"))
                .isEqualTo(
                        "The picture is blurred: edges spread over 3.6 pixels, and at most 3.0 are measured with. Rest"
                                + " the camera, let it focus on the card and take the picture again.");
        assertThat(Taken.refusal(Renderer.jpeg(SCENE.blurred(9), 3), "pocket"))
                .isEqualTo(
                        "The picture is blurred: a card shows, but its squares cannot be read. Rest the camera, let it focus on"
                                + " the card and take the picture again.");
    }

    @Test
    void tooFewCorners() {
        Pixel from = SCENE.view().pixel(Point.of(30, 23), 0);
        assertThat(Taken.refusal(jpeg(covered(0, 0, (int) from.x(), WIDTH_PX)), "pocket"))
                .isEqualTo(
                        "Only 10 corners of the card were read; 12 are needed. Uncover the card, avoid glare on it, go nearer"
                                + " and take the picture again.");
    }

    @Test
    void truncatedJpeg() {
        byte[] whole = jpeg(PICTURE);
        assertThat(Taken.refusal(Arrays.copyOf(whole, whole.length / 2), "pocket"))
                .isEqualTo(
                        "The file is only a part of a JPEG picture: its end is missing. Copy it from the camera again.");
    }

    @Test
    void gifCalledJpg() throws IOException {
        ByteArrayOutputStream gif = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(20, 20, BufferedImage.TYPE_INT_RGB), "gif", gif);
        assertThat(Taken.refusal(gif.toByteArray(), "pocket"))
                .isEqualTo(
                        "The file is a GIF picture, whatever its name says. Pictures are taken as JPEG or PNG; open it and save"
                                + " it as JPEG.");
    }

    /** A file of 45 bytes that claims 900 million pixels. The limit is what the whole program may take for it. */
    @Test
    void aBombIsRefusedByItsHeader() {
        long limit_bytes = 300_000_000;
        byte[] bomb = claimingPng(30_000, 30_000);
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        String reason = Taken.refusal(bomb, "pocket");
        assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(limit_bytes / 100);
        assertThat(reason)
                .isEqualTo(
                        "The picture is 30000 × 30000 pixels (900 million); at most 100 million fit, and 30000 along one edge."
                                + " Save it with fewer pixels.");
    }

    private static byte[] claimingPng(int width, int height) {
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

    /** The file tells twice the focal length; the card does not agree and is believed. */
    @Test
    void aWrongFocalLengthIsFoundOut() {
        byte[] lying = Jpeg.noted(jpeg(PICTURE), 1, 52, WIDTH_PX, 1200);
        MeasuredPhoto photo = Taken.measured(lying, "pocket");
        assertThat(photo.caveats().get(0).text())
                .isEqualTo(
                        "The file tells a focal length of 2404 pixels, the card shows 1207: the picture was zoomed, cropped"
                                + " or saved anew. The card is believed.");
        Mark mark = Taken.line(SCENE, Point.of(-10, 10), Point.of(70, 10), 0, Height.IN_PLANE);
        assertThat(Math.abs(Taken.length(photo, mark).length_mm() - 80)).isLessThan(0.1);
    }

    @Test
    void aPictureThatWasCroppedSaysSo() {
        byte[] cropped = Jpeg.noted(jpeg(PICTURE), 1, 26, 4032, 3024);
        MeasuredPhoto photo = Taken.measured(cropped, "pocket");
        assertThat(photo.caveats().get(0).text())
                .isEqualTo(
                        "The file says that the camera took 4032 × 3024 pixels, which this picture does not have: it was"
                                + " cropped or made smaller. Measure in the file as the camera made it.");
    }

    @Test
    void aMarkTooFarOut() {
        MeasuredPhoto photo = Taken.measured(jpeg(PICTURE), "pocket");
        Mark far =
                new Mark("far", MarkKind.LINE, List.of(new Pixel(800, 600), new Pixel(800, -30_000)), Height.IN_PLANE);
        assertThat(((MarkAnswer.NotMeasured) photo.measure(far)).reason())
                .isEqualTo(
                        "A point of this mark lies beyond the horizon of the card's plane. Mark nearer to the card.");
        Pixel out = SCENE.view().pixel(Point.of(30, 400), 0);
        Mark outside = new Mark("out", MarkKind.LINE, List.of(new Pixel(800, 600), out), Height.IN_PLANE);
        assertThat(((MarkAnswer.NotMeasured) photo.measure(outside)).reason())
                .isEqualTo(
                        "A point of this mark lies 309 mm outside the card; up to 270 mm are measured (three lengths of"
                                + " the card). Lay the card nearer and take the picture again.");
    }
}
