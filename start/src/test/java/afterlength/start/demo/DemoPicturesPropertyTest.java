package afterlength.start.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DemoPicturesPropertyTest {
    /** What the demonstration shop can carry for each picture. */
    private static final int HEAVIEST_BYTES = 600_000;

    @ParameterizedTest
    @EnumSource
    void isAJpegOfItsSizeThatSaysWhatItIs(DemoPicture which) throws IOException {
        byte[] jpeg = DemoPictures.jpeg(which);
        assertThat(jpeg.length).isLessThan(HEAVIEST_BYTES);
        BufferedImage image = Objects.requireNonNull(ImageIO.read(new ByteArrayInputStream(jpeg)));
        assertThat(image.getWidth()).isEqualTo(which.view().width());
        assertThat(image.getHeight()).isEqualTo(which.view().height());
        // Ink and paper of the strip, after compression.
        int top = image.getHeight() - 50;
        BufferedImage strip = image.getSubimage(0, top, image.getWidth(), 48);
        assertThat(darkPixels(strip)).as("pixels of ink").isBetween(1_500, 8_000);
        assertThat(darkPixels(strip.getSubimage(image.getWidth() / 2, 0, image.getWidth() / 2, 48)))
                .isZero();
    }

    private static int darkPixels(BufferedImage image) {
        int dark = 0;
        for (int pixel : image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth())) {
            dark += (pixel >> 8 & 0xff) < 128 ? 1 : 0;
        }
        return dark;
    }

    @Test
    void isTheSameEveryTime() throws IOException {
        assertThat(DemoPictures.jpeg(DemoPicture.VIOLA_LABEL)).isEqualTo(DemoPictures.jpeg(DemoPicture.VIOLA_LABEL));
    }

    @Test
    void crackIsDarkerBeforeThanAfter() {
        assertThat(darkestOnTheCrack(DemoPicture.VIOLA_CRACK))
                .isLessThan(darkestOnTheCrack(DemoPicture.VIOLA_CRACK_AFTER) - 20);
    }

    /** A level line across the crack in the middle of the picture, well off the sound-hole. */
    private static int darkestOnTheCrack(DemoPicture which) {
        BufferedImage image = DemoPictures.painted(which);
        int darkest = 255;
        for (int x = 800; x < 1000; x++) {
            darkest = Math.min(darkest, image.getRGB(x, 800) >> 8 & 0xff);
        }
        return darkest;
    }

    @Test
    void fileNamesAreInLowerCase() {
        assertThat(DemoPicture.VIOLA_FRONT_AFTER.fileName()).isEqualTo("viola-front-after.jpg");
    }

    @Test
    void letterWithoutStrokesIsRefused() {
        BufferedImage image = new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB);
        assertThatThrownBy(() -> PenLettering.write(image.createGraphics(), "x", 0, 0, 10))
                .hasMessage("letter 'x' is not drawn; add its strokes");
    }
}
