package afterlength.sight.camera;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
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
    private static final double FIRST_DEVIATION_PX = 0.1;

    /** As in the fit of one picture: what a corner is off by at least (docs/sources.md#photo-study). */
    private static final double LEAST_DEVIATION_PX = 0.05;

    /** Beyond it one lens does not explain all pictures: a bent card, another focus, another camera. */
    public static final double LARGEST_RESIDUAL_PX = 0.5;

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
        double[] rough = squares(FIRST_DEVIATION_PX).solve(start());
        LeastSquares squares = squares(Math.max(LEAST_DEVIATION_PX, scatter_px(rough)));
        double[] solved = squares.solve(rough);
        List<LensCalibrationAnswer.Seen> seen = seen(solved);
        OptionalInt bad = IntStream.range(0, seen.size())
                .filter(n -> !(seen.get(n).residual_px() <= LARGEST_RESIDUAL_PX))
                .findFirst();
        if (bad.isPresent()) {
            return new LensCalibrationAnswer.Refused(String.format(
                    Locale.ROOT,
                    "In picture %d the corners lie %.2f pixels beside where the lens of all pictures shows them; at most %.1f are"
                            + " calibrated with. Take that picture out: the card was bent, or the camera focused anew.",
                    bad.getAsInt() + 1,
                    seen.get(bad.getAsInt()).residual_px(),
                    LARGEST_RESIDUAL_PX));
        }
        RealMatrix covariance = squares.covariance(solved);
        Guess[] known = new Guess[ViewParameters.OF_LENS];
        Arrays.setAll(known, n -> new Guess(solved[n], Math.sqrt(covariance.getEntry(n, n))));
        return new LensCalibrationAnswer.Calibrated(
                new LensGuess(known[0], known[1], known[2], known[3]), residual_px(solved), seen);
    }

    private LeastSquares squares(double deviation_px) {
        return new LeastSquares(values -> leftovers(values, deviation_px), steps());
    }

    private int corners() {
        return pictures.stream().mapToInt(List::size).sum();
    }

    private View view(double[] solved, int picture) {
        return alone.get(picture).with(values(solved, picture)).view();
    }

    private double residual_px(double[] solved) {
        double squares = 0;
        for (int n = 0; n < pictures.size(); n++) {
            squares += pictures.get(n).size() * Math.pow(Leftovers.residual_px(pictures.get(n), view(solved, n)), 2);
        }
        return Math.sqrt(squares / corners());
    }

    /** Per coordinate, with the freedoms of the poses and of the lens taken off. */
    private double scatter_px(double[] solved) {
        double free = Math.max(1, 2.0 * corners() - solved.length);
        return residual_px(solved) * Math.sqrt(corners() / free);
    }

    private List<LensCalibrationAnswer.Seen> seen(double[] solved) {
        return IntStream.range(0, pictures.size())
                .mapToObj(n -> new LensCalibrationAnswer.Seen(
                        Leftovers.residual_px(pictures.get(n), view(solved, n)),
                        view(solved, n).tilt_deg(),
                        view(solved, n).axisDistance_mm()))
                .toList();
    }

    private double[] leftovers(double[] values, double deviation_px) {
        int corners = corners();
        Leftovers leftovers = new Leftovers(ViewParameters.OF_LENS + 2 * corners);
        leftovers.put(guess, values);
        for (int n = 0; n < pictures.size(); n++) {
            leftovers.put(pictures.get(n), view(values, n), deviation_px);
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
