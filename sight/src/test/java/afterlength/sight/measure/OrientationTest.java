package afterlength.sight.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Point;
import afterlength.sight.card.Card;
import afterlength.sight.rendered.Jpeg;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;
import java.awt.image.BufferedImage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** However the camera was held, the upright picture and its millimetres are the same. */
class OrientationTest {
    private static final Scene SCENE = Scene.of(Card.POCKET, 1600, Scene.Camera.over(Card.POCKET, 20, 70, 260));
    private static final BufferedImage UPRIGHT = Renderer.render(SCENE, 6);

    /** JPEG squares lie differently on a turned picture, which moves a corner by some hundredths of a pixel. */
    private static final double JPEG_MM = 0.02;

    private static final double TRUE_MM = Math.hypot(110, 85);
    private static final double UNTURNED_MM = length(1).length_mm();

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void theSameMillimetres(int orientation) {
        MarkAnswer.Line line = length(orientation);
        assertThat(line.length_mm()).isCloseTo(UNTURNED_MM, within(JPEG_MM));
        assertThat(line.length_mm()).isCloseTo(TRUE_MM, within(line.terms_mm().plusMinus()));
    }

    private static MarkAnswer.Line length(int orientation) {
        byte[] file = Jpeg.noted(Jpeg.of(laid(orientation), 0.95), orientation, 26, 1600, 1200);
        MeasuredPhoto photo = Taken.measured(file, "pocket");
        assertThat(photo.width_px()).isEqualTo(1600);
        assertThat(photo.fitted().corners()).isEqualTo(Card.POCKET.cornerCount());
        return Taken.length(photo, Taken.line(SCENE, Point.of(-40, 10), Point.of(70, 95), 0, Height.IN_PLANE));
    }

    /**
     * The picture as the sensor lay. The note tells which sides of the upright picture the first row and the first column of
     * the file are: 1 top left, 2 top right, 3 bottom right, 4 bottom left, 5 left top, 6 right top, 7 right bottom, 8 left
     * bottom (EXIF 2.3, tag 274).
     */
    private static BufferedImage laid(int orientation) {
        boolean lies = orientation >= 5;
        int width = lies ? UPRIGHT.getHeight() : UPRIGHT.getWidth();
        int height = lies ? UPRIGHT.getWidth() : UPRIGHT.getHeight();
        boolean fromRight = orientation == 2 || orientation == 3 || orientation == 6 || orientation == 7;
        boolean fromBottom = orientation == 3 || orientation == 4 || orientation == 7 || orientation == 8;
        BufferedImage laid = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        for (int row = 0; row < height; row++) {
            for (int column = 0; column < width; column++) {
                int x = lies ? row : column;
                int y = lies ? column : row;
                int fromX = fromRight ? UPRIGHT.getWidth() - 1 - x : x;
                int fromY = fromBottom ? UPRIGHT.getHeight() - 1 - y : y;
                laid.setRGB(column, row, UPRIGHT.getRGB(fromX, fromY));
            }
        }
        return laid;
    }
}
