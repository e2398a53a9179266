package afterlength.sight.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Point;
import afterlength.sight.card.Card;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;
import org.junit.jupiter.api.Test;

/** A bar of 200 mm on top of the arch, 15 mm over the card, photographed from 430 mm. */
class HeightPropertyTest {
    private static final double BAR_MM = 200;
    private static final Scene SCENE = Scene.of(Card.BODY, 4032, Scene.Camera.over(Card.BODY, 0, 0, 430));
    private static final MeasuredPhoto PHOTO = Taken.measured(noted(), "body");

    private static byte[] noted() {
        return afterlength.sight.rendered.Jpeg.noted(Renderer.jpeg(SCENE, 15), 1, 26, 4032, 3024);
    }

    private static MarkAnswer.Line read(Height height) {
        Point from = Point.of(60, 30);
        return Taken.length(PHOTO, Taken.line(SCENE, from, from.plus(0, BAR_MM), 15, height));
    }

    private static double error_pct(MarkAnswer.Line line) {
        return (line.length_mm() / BAR_MM - 1) * 100;
    }

    /** h/(Z − h) = 15/415 = 3.6 %, docs/sources.md#photo-study; the rest is the fit of this picture. */
    @Test
    void readInThePlaneOfTheCardItIsTooLongByThreeAndAHalfPerCent() {
        assertThat(error_pct(read(Height.IN_PLANE))).isCloseTo(3.61, within(0.05));
    }

    @Test
    void theHeightClassTakesItAway() {
        assertThat(Math.abs(error_pct(read(Height.TOP)))).isLessThan(0.5);
    }

    @Test
    void withoutAClassThePlusMinusIsAsLargeAsTheError() {
        MarkAnswer.Line unknown = read(Height.UNKNOWN);
        assertThat(unknown.terms_mm().height()).isCloseTo(BAR_MM * 15 / 430, within(0.4));
        assertThat(unknown.terms_mm().plusMinus()).isGreaterThan(unknown.length_mm() - BAR_MM);
    }

    @Test
    void aChosenClassIsNotBelievedToTheMillimetre() {
        MarkAnswer.Line chosen = read(Height.TOP);
        assertThat(chosen.terms_mm().height()).isCloseTo(BAR_MM * 3 / 415, within(0.05));
    }
}
