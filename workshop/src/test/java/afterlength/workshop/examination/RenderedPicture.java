package afterlength.workshop.examination;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Pixel;
import afterlength.sight.card.Card;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;

/** A rendered photograph of a pocket card, slanted; where a place of the card's plane lies in it is known. */
final class RenderedPicture {
    static final Scene SCENE = Scene.of(Card.POCKET, 1600, Scene.Camera.over(Card.POCKET, 20, 70, 260));
    static final byte[] JPEG = Renderer.jpeg(SCENE, 3);

    private RenderedPicture() {}

    /** "812.52 604.1", as the field for points has it. */
    static String at(double x_mm, double y_mm) {
        Pixel pixel = SCENE.view().pixel(Point.of(x_mm, y_mm), 0);
        return Math.round(pixel.x() * 100) / 100.0 + " " + Math.round(pixel.y() * 100) / 100.0;
    }
}
