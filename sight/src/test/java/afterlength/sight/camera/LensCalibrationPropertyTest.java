package afterlength.sight.camera;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.craft.geometry.Point;
import afterlength.sight.card.Card;
import afterlength.sight.card.Corner;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A lens of 3067 pixels, k1 0.012, its axis 14 and −9 pixels beside the middle, seen in pictures of 4032 × 3024. */
class LensCalibrationPropertyTest {
    private static final int WIDTH_PX = 4032;
    private static final int HEIGHT_PX = 3024;
    private static final Lens TRUE = new Lens(3067, 0.012, WIDTH_PX / 2.0 + 14, HEIGHT_PX / 2.0 - 9);
    private static final LensGuess NOTED = LensGuess.of(WIDTH_PX, HEIGHT_PX, OptionalDouble.of(3028));
    private static final double NOISE_PX = 0.1;
    private static final long SEED = 5;

    private final SplittableRandom random = new SplittableRandom(SEED);

    /**
     * The body card with its middle this far from the middle of the picture, slanted. Its empty corner would lie in the lower
     * right; towards that corner of the picture it is turned round, as a person has to.
     */
    private List<Sighting> picture(double right_mm, double down_mm, double tilt_deg, double around_deg) {
        double tilt = Math.toRadians(tilt_deg);
        double around = Math.toRadians(around_deg);
        double round = right_mm > 100 && down_mm > 100 ? -Math.PI / 2 : Math.PI / 2;
        Turn turn = Turn.around(0, 0, round).after(Turn.around(Math.cos(around) * tilt, Math.sin(around) * tilt, 0));
        double[] middle = turn.applied(95, 140, 0);
        View view = new View(TRUE, turn, new double[] {right_mm - middle[0], down_mm - middle[1], 560 - middle[2]});
        List<Sighting> sightings = new ArrayList<>();
        for (Corner corner : Card.BODY.corners()) {
            Pixel pixel = view.pixel(corner.place(), 0);
            sightings.add(new Sighting(corner.place(), noisy(pixel)));
        }
        return sightings;
    }

    private Pixel noisy(Pixel pixel) {
        return new Pixel(pixel.x() + NOISE_PX * random.nextGaussian(), pixel.y() + NOISE_PX * random.nextGaussian());
    }

    private List<List<Sighting>> allOver(double tilt_deg) {
        return List.of(
                picture(0, 0, tilt_deg, 10),
                picture(-190, -140, tilt_deg, 80),
                picture(190, -140, tilt_deg, 150),
                picture(190, 140, tilt_deg, 220),
                picture(-190, 140, tilt_deg, 300));
    }

    @Test
    void fivePicturesAllOverFindTheLens() {
        LensGuess lens = ((LensCalibrationAnswer.Calibrated) LensCalibration.of(allOver(30), NOTED)).lens();
        assertThat(lens.focal_px()).as("seed " + SEED).isCloseTo(TRUE.focal_px(), within(0.001 * TRUE.focal_px()));
        assertThat(lens.k1().value()).as("seed " + SEED).isCloseTo(TRUE.k1(), within(0.001));
        assertThat(lens.logFocal().deviation()).isLessThan(0.001);
    }

    @Test
    void theLensSoFoundMakesALaterPictureTrue() {
        LensGuess lens = ((LensCalibrationAnswer.Calibrated) LensCalibration.of(allOver(30), NOTED)).lens();
        View later = ViewFit.of(picture(30, 20, 5, 40), lens).view();
        assertThat(later.lens().focal_px()).isCloseTo(TRUE.focal_px(), within(0.002 * TRUE.focal_px()));
        assertThat(later.tilt_deg()).isCloseTo(5, within(0.2));
        assertThat(Point.of(0, 0).distanceTo_mm(later.place(later.pixel(Point.of(0, 0), 15), 15)))
                .isLessThan(1e-6);
    }

    @Test
    void aCardThatWasAlwaysInTheMiddleIsRefused() {
        List<List<Sighting>> middle = List.of(
                picture(0, 0, 30, 10),
                picture(5, 0, 30, 80),
                picture(0, 5, 30, 150),
                picture(-5, 0, 30, 220),
                picture(0, -5, 30, 300));
        assertThat(LensCalibration.of(middle, NOTED))
                .isEqualTo(new LensCalibrationAnswer.Refused(
                        "The card was near 0 of the four corners of the picture; it has to be"
                                + " near each of them once. Take more pictures with the card towards the corners,"
                                + " turned so that its squares lie there."));
    }

    @Test
    void picturesFromStraightAboveAreRefused() {
        assertThat(LensCalibration.of(allOver(3), NOTED))
                .isEqualTo(new LensCalibrationAnswer.Refused(
                        "0 of the pictures were taken at a slant of 15° or more; 3 are"
                                + " needed. Hold the camera slanted, some 25 to 35°."));
    }

    @Test
    void fourPicturesAreTooFew() {
        assertThat(LensCalibration.of(allOver(30).subList(0, 4), NOTED))
                .isEqualTo(new LensCalibrationAnswer.Refused(
                        "There are 4 pictures of the card; 5 or more are needed: one in the"
                                + " middle and one in each corner."));
    }
}
