package afterlength.sight.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Card;
import afterlength.sight.find.CardFinder;
import afterlength.sight.find.FoundCorner;
import afterlength.sight.rendered.Jpeg;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

class RectifiedPictureTest {
    private static final Scene SCENE = Scene.of(Card.POCKET, 1600, Scene.Camera.over(Card.POCKET, 30, 20, 260));
    private static final BufferedImage UPRIGHT = Renderer.render(SCENE, 2);
    private static final MeasuredPhoto PHOTO = Taken.measured(Jpeg.of(UPRIGHT, 0.95), "pocket");

    private static RectifiedPicture rectified(double px_mm) {
        return RectifiedPicture.of(UPRIGHT, PHOTO.fitted().view(), 0, Point.of(-10, -10), Point.of(70, 100), px_mm);
    }

    /** The card found in the rectified picture has its own measures there, to a tenth of a pixel. */
    @Test
    void theCardIsTrueToSizeInIt() {
        RectifiedPicture flat = rectified(5);
        List<FoundCorner> corners = CardFinder.find(flat.picture()).get(0).corners();
        assertThat(corners).hasSize(Card.POCKET.cornerCount());
        assertThat(corners)
                .allSatisfy(one -> assertThat(flat.place(one.seen())
                                .distanceTo_mm(one.corner().place()))
                        .isCloseTo(0, within(0.06)));
    }

    @Test
    void whatThePhotographDoesNotShowStaysWhite() {
        RectifiedPicture flat =
                RectifiedPicture.of(UPRIGHT, PHOTO.fitted().view(), 0, Point.of(2000, 2000), Point.of(2010, 2010), 1);
        assertThat(flat.picture().getRGB(5, 5) & 0xFFFFFF).isEqualTo(0xFFFFFF);
        assertThat(flat.place(new Pixel(5, 5))).isEqualTo(Point.of(2005, 2005));
    }

    @Test
    void itIsNeverLargerThanTheMemory() {
        assertThatThrownBy(() -> rectified(1000))
                .hasMessage(
                        "a rectified picture of 80000 × 110000 pixels; give at least 1 and together at most 40000000");
    }
}
