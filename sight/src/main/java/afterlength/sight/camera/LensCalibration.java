package afterlength.sight.camera;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.linear.RealMatrix;

/**
 * One lens solved from several pictures of the same card: the lens is shared, every picture has its own pose. Worth the trouble
 * only when the card was seen in all four corners and tilted: a card that was always in the middle says nothing about the
 * edges, and the fit would invent errors of many millimetres (docs/sources.md#photo-study); then it is refused.
 */
public final class LensCalibration {
    public static final int FEWEST_PICTURES = 5;

    /** A corner of the picture counts as seen when the card came this near to it, from the middle. */
    private static final double FAR_SHARE = 0.6;

    private static final double LEAST_TILT_DEG = 15;
    private static final int FEWEST_TILTED = 3;
    private static final double DEVIATION_PX = 0.1;

    private final List<List<Sighting>> pictures;
    private final LensGuess guess;
    private final List<ViewParameters> alone = new ArrayList<>();

    private LensCalibration(List<List<Sighting>> pictures, LensGuess guess) {
        this.pictures = pictures;
        this.guess = guess;
    }

    /** Solves it from what was seen in each picture; all of one size and upright the same way. */
    public static LensCalibrationAnswer of(List<List<Sighting>> pictures, LensGuess guess) {
        if (pictures.size() < FEWEST_PICTURES) {
            return new LensCalibrationAnswer.Refused("There are " + pictures.size() + " pictures of the card; "
                    + FEWEST_PICTURES + " or more are needed: one in the middle and one in each corner.");
        }
        return new LensCalibration(pictures, guess).answer();
    }

    private LensCalibrationAnswer answer() {
        long corners = cornersSeen();
        if (corners < 4) {
            return new LensCalibrationAnswer.Refused("The card was near " + corners
                    + " of the four corners of the picture; it has to be near each of them once. Take more pictures with the"
                    + " card towards the corners, turned so that its squares lie there.");
        }
        pictures.forEach(sightings -> alone.add(fit(sightings)));
        long tilted = alone.stream()
                .filter(parameters -> parameters.view().tilt_deg() >= LEAST_TILT_DEG)
                .count();
        if (tilted < FEWEST_TILTED) {
            return new LensCalibrationAnswer.Refused(tilted + " of the pictures were taken at a slant of "
                    + Math.round(LEAST_TILT_DEG) + "° or more; " + FEWEST_TILTED
                    + " are needed. Hold the camera slanted, some 25 to 35°.");
        }
        return solved();
    }

    private ViewParameters fit(List<Sighting> sightings) {
        return ViewFit.of(sightings, guess).parameters();
    }

    private LensCalibrationAnswer solved() {
        LeastSquares squares = new LeastSquares(this::leftovers, steps());
        double[] solved = squares.solve(start());
        RealMatrix covariance = squares.covariance(solved);
        Guess[] known = new Guess[ViewParameters.OF_LENS];
        Arrays.setAll(known, n -> new Guess(solved[n], Math.sqrt(covariance.getEntry(n, n))));
        return new LensCalibrationAnswer.Calibrated(new LensGuess(known[0], known[1], known[2], known[3]));
    }

    private double[] leftovers(double[] values) {
        int corners = pictures.stream().mapToInt(List::size).sum();
        Leftovers leftovers = new Leftovers(ViewParameters.OF_LENS + 2 * corners);
        leftovers.put(guess, values);
        for (int n = 0; n < pictures.size(); n++) {
            leftovers.put(pictures.get(n), alone.get(n).with(values(values, n)).view(), DEVIATION_PX);
        }
        return leftovers.all();
    }

    private static double[] values(double[] shared, int picture) {
        double[] values = Arrays.copyOf(shared, ViewParameters.COUNT);
        int poseLength = ViewParameters.COUNT - ViewParameters.OF_LENS;
        System.arraycopy(
                shared, ViewParameters.OF_LENS + picture * poseLength, values, ViewParameters.OF_LENS, poseLength);
        return values;
    }

    private double[] start() {
        List<double[]> pieces = new ArrayList<>();
        pieces.add(alone.get(0).ofLens());
        alone.forEach(parameters -> pieces.add(parameters.ofPose()));
        return joined(pieces);
    }

    private double[] steps() {
        List<double[]> pieces = new ArrayList<>();
        pieces.add(Arrays.copyOf(ViewParameters.steps(), ViewParameters.OF_LENS));
        pictures.forEach(any ->
                pieces.add(Arrays.copyOfRange(ViewParameters.steps(), ViewParameters.OF_LENS, ViewParameters.COUNT)));
        return joined(pieces);
    }

    private static double[] joined(List<double[]> pieces) {
        return pieces.stream().flatMapToDouble(Arrays::stream).toArray();
    }

    /** How many of the four corners of the picture the card came near to. */
    private long cornersSeen() {
        return pictures.stream()
                .flatMap(List::stream)
                .map(Sighting::seen)
                .map(this::fromMiddle)
                .filter(from -> Math.min(Math.abs(from.x()), Math.abs(from.y())) >= FAR_SHARE)
                .map(from -> Math.signum(from.x()) + 2 * Math.signum(from.y()))
                .distinct()
                .count();
    }

    private Pixel fromMiddle(Pixel seen) {
        double halfX_px = guess.centreX_px().value();
        double halfY_px = guess.centreY_px().value();
        return new Pixel((seen.x() - halfX_px) / halfX_px, (seen.y() - halfY_px) / halfY_px);
    }
}
