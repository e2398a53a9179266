package afterlength.sight.measure;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.sight.camera.Guess;
import afterlength.sight.camera.LensGuess;
import afterlength.sight.camera.Pixel;
import afterlength.sight.picture.CameraNotes;
import afterlength.sight.picture.CameraTurn;
import afterlength.sight.picture.Picture;
import java.awt.image.BufferedImage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the picture library: where one pixel of the sensor goes when the library turns the picture upright. */
class LaidPictureTest {
    private static final int WIDTH_PX = 7;
    private static final int HEIGHT_PX = 5;
    private static final Pixel LAID = new Pixel(5.5, 1.5);

    private static Picture turned(int orientation) {
        BufferedImage laid = new BufferedImage(WIDTH_PX, HEIGHT_PX, BufferedImage.TYPE_INT_RGB);
        laid.setRGB(5, 1, 0xFFFFFF);
        CameraTurn turn = new CameraTurn(orientation);
        return new Picture(turn.upright(laid), CameraNotes.NONE, turn);
    }

    private static Pixel whiteOne(BufferedImage picture) {
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                if ((picture.getRGB(x, y) & 0xFF) > 128) {
                    return new Pixel(x + 0.5, y + 0.5);
                }
            }
        }
        throw new AssertionError("the pixel was lost");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6, 8})
    void aPixelGoesWhereTheLibraryTurnsItAndBack(int orientation) {
        Picture picture = turned(orientation);
        LaidPicture laid = LaidPicture.of(picture);
        assertThat(laid.width_px()).isEqualTo(WIDTH_PX);
        assertThat(laid.height_px()).isEqualTo(HEIGHT_PX);
        assertThat(laid.upright(LAID)).isEqualTo(whiteOne(picture.upright()));
        assertThat(laid.laid(laid.upright(LAID))).isEqualTo(LAID);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6, 8})
    void theAxisOfALensTurnsWithThePictureAndSoDoesItsUncertainty(int orientation) {
        Picture picture = turned(orientation);
        LensGuess sensor = new LensGuess(
                new Guess(1, 0.01), new Guess(0, 0.01), new Guess(LAID.x(), 0.2), new Guess(LAID.y(), 0.3));
        LensGuess upright = LaidPicture.of(picture).upright(sensor);
        assertThat(new Pixel(upright.centreX_px().value(), upright.centreY_px().value()))
                .isEqualTo(whiteOne(picture.upright()));
        assertThat(upright.centreX_px().deviation()).isEqualTo(picture.turn().lays() ? 0.3 : 0.2);
    }
}
