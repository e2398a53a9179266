package afterlength.sight.camera;

import java.util.OptionalDouble;

/**
 * The lens before the picture is looked at. The logarithm of the focal length is guessed, so that its deviation is a share.
 *
 * @param logFocal of the focal length in pixels
 */
public record LensGuess(Guess logFocal, Guess k1, Guess centreX_px, Guess centreY_px) {
    /** A noted focal length is a whole number of millimetres (26 ± 0.5 is 2 %) and moves a little with the distance. */
    private static final double NOTED_SHARE = 0.03;

    /** Telephones of today see some 65 to 75 degrees across the longer edge; a second lens half of it: nearly nothing is known. */
    private static final double USUAL_SHARE_OF_EDGE = 0.75;

    private static final double USUAL_SHARE = 0.35;

    /** What a telephone leaves after its own correction; an assumption (docs/sources.md#photo-study). */
    private static final double K1_DEVIATION = 0.02;

    /** How far the axis of a lens lies from the middle of the picture, as a share of the longer edge; an assumption likewise. */
    private static final double CENTRE_SHARE = 0.003;

    /** Of a picture that was cropped the middle says little about the axis. */
    private static final double CROPPED_CENTRE_SHARE = 0.15;

    /** Wide lenses bend so much before a telephone corrects them; an assumption, wide on purpose. */
    private static final double ANY_K1_DEVIATION = 0.1;

    /** The guess for a picture of this size, from the noted focal length where there is one. */
    public static LensGuess of(int width_px, int height_px, OptionalDouble noted_px) {
        return of(width_px, height_px, noted_px, CENTRE_SHARE);
    }

    /** The guess for a picture that is only a part of what the camera took. */
    public static LensGuess ofCropped(int width_px, int height_px) {
        return of(width_px, height_px, OptionalDouble.empty(), CROPPED_CENTRE_SHARE);
    }

    /** Nearly nothing: for the question what the card alone says of the lens. */
    public static LensGuess ofAny(int width_px, int height_px) {
        LensGuess cropped = ofCropped(width_px, height_px);
        return new LensGuess(cropped.logFocal, new Guess(0, ANY_K1_DEVIATION), cropped.centreX_px, cropped.centreY_px);
    }

    private static LensGuess of(int width_px, int height_px, OptionalDouble noted_px, double centreShare) {
        int edge_px = Math.max(width_px, height_px);
        double focal_px = noted_px.orElse(USUAL_SHARE_OF_EDGE * edge_px);
        double share = noted_px.isPresent() ? NOTED_SHARE : USUAL_SHARE;
        return new LensGuess(
                new Guess(Math.log(focal_px), share),
                new Guess(0, K1_DEVIATION),
                new Guess(width_px / 2.0, centreShare * edge_px),
                new Guess(height_px / 2.0, centreShare * edge_px));
    }

    /** The most likely focal length. */
    public double focal_px() {
        return Math.exp(logFocal.value());
    }

    Guess get(int parameter) {
        return switch (parameter) {
            case 0 -> logFocal;
            case 1 -> k1;
            case 2 -> centreX_px;
            default -> centreY_px;
        };
    }
}
