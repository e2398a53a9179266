package afterlength.sight.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Card;
import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.measure.PhotoMeasuring;
import afterlength.sight.measure.PhotoRequest;
import afterlength.sight.measure.Print;
import afterlength.sight.measure.Progress;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.rendered.Jpeg;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;
import java.awt.image.BufferedImage;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;

class PaperLightTest {
    private static final Scene SCENE = Scene.of(Card.POCKET, 1200, Scene.Camera.over(Card.POCKET, 20, 70, 200));
    private static final BufferedImage PICTURE = Renderer.render(SCENE, 4);
    private static final MeasuredPhoto PHOTO = (MeasuredPhoto) PhotoMeasuring.of(
            new PictureFile("photo.jpg", Jpeg.of(PICTURE, 0.95)),
            PhotoRequest.of("pocket", Print.checked(100, 100)),
            Progress.SILENT);

    private static PaperLight light(IntUnaryOperator change) {
        BufferedImage changed = new BufferedImage(PICTURE.getWidth(), PICTURE.getHeight(), BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < PICTURE.getHeight(); y++) {
            for (int x = 0; x < PICTURE.getWidth(); x++) {
                changed.setRGB(x, y, change.applyAsInt(PICTURE.getRGB(x, y) & 0xFF));
            }
        }
        return PaperLight.of(changed, PHOTO);
    }

    private static int rgb(int red, int green, int blue) {
        return red << 16 | green << 8 | blue;
    }

    @Test
    void greyLightIsNeitherWarmNorBurntOut() {
        PaperLight light = light(value -> rgb(value, value, value));
        assertThat(light.redToBlue()).isCloseTo(1, within(1e-9));
        assertThat(light.isWarm()).isFalse();
        assertThat(light.clipped()).isFalse();
    }

    /** The scene has a shadow of 20 % with a soft edge over the card. */
    @Test
    void aShadowOverTheCardIsUneven() {
        assertThat(light(value -> rgb(value, value, value)).caveats())
                .singleElement()
                .asString()
                .matches(
                        "The light differs by \\d+ % over the card; from 5 % on it shifts colours\\. Turn towards the window or step"
                                + " out of the shadow\\.");
    }

    @Test
    void aWarmLampIsToldOf() {
        PaperLight light = light(value -> rgb(value, value * 9 / 10, value * 7 / 10));
        assertThat(light.isWarm()).isTrue();
        assertThat(light.caveats())
                .contains("The light was warm: colours read in it are far less certain. Take the picture in daylight.");
    }

    @Test
    void burntOutPaperIsToldOf() {
        PaperLight light = light(value -> rgb(255, Math.min(255, value * 2), 255));
        assertThat(light.clipped()).isTrue();
        assertThat(light.caveats())
                .contains(
                        "Part of the card is burnt out to full white; colours there are lost. Expose less, avoid gloss.");
    }

    /** The colours of sRGB's own red in CIELAB, D65: 53.24, 80.09, 67.20 (docs/sources.md#srgb). */
    @Test
    void aReadingIsInCielabAndKnowsWhatItIsWorth() {
        BufferedImage red = new BufferedImage(9, 9, BufferedImage.TYPE_INT_RGB);
        for (int n = 0; n < 81; n++) {
            red.setRGB(n % 9, Math.floorDiv(n, 9), 0xFF0000);
        }
        ColourReading reading = ColourReading.of(red, new Pixel(4.5, 4.5), 6, new PaperLight(1, 0, false));
        assertThat(reading.colour().lightness()).isCloseTo(53.24, within(0.01));
        assertThat(reading.colourClass()).isEqualTo(ColourClass.UNCALIBRATED);
        assertThat(reading.usualError_dE00()).isEqualTo(4.8);
        assertThatThrownBy(() -> ColourReading.of(red, new Pixel(90, 4), 2, new PaperLight(1, 0, false)))
                .hasMessage("the place Pixel[x=90.0, y=4.0] lies outside the picture");
    }

    @Test
    void everyClassIsWorseUnderAWarmLamp() {
        assertThat(ColourClass.values())
                .allSatisfy(one -> assertThat(one.usualError_dE00(true)).isGreaterThan(one.usualError_dE00(false)));
        assertThat(ColourClass.UNCALIBRATED.words()).isEqualTo("uncalibrated");
    }
}
