package afterlength.sight.camera;

import java.util.List;

/**
 * Pose, focal length and k1 solved together from the corners of one picture: least squares of the distances between corners
 * seen and corners expected, and of the distances of the lens from what was guessed of it, each in its own deviation. So the
 * corners decide where they can and the guess where they cannot: seen nearly from above they hardly tell the focal length, and
 * it stays what the camera noted. The uncertainty is the inverse of the same equations.
 *
 * <p>Not for places far outside the corners, and no outlier is thrown out: a wrong corner shows in the residual.
 */
public final class ViewFit {
    /** What a corner is off by at least, whatever a lucky picture says; found on rendered pictures (docs/sources.md#photo-study). */
    private static final double LEAST_DEVIATION_PX = 0.05;

    private static final double FIRST_DEVIATION_PX = 0.1;

    private final List<Sighting> sightings;
    private final LensGuess guess;

    private ViewFit(List<Sighting> sightings, LensGuess guess) {
        this.sightings = sightings;
        this.guess = guess;
    }

    /** Solves it from at least six corners, not all on one line. */
    public static FittedView of(List<Sighting> sightings, LensGuess guess) {
        if (sightings.size() < 6) {
            throw new IllegalArgumentException(sightings.size() + " corners do not fix a view; give 6 or more");
        }
        return new ViewFit(sightings, guess).fitted();
    }

    private FittedView fitted() {
        ViewParameters first = FirstPose.of(sightings, guess);
        ViewParameters rough = first.with(squares(first, FIRST_DEVIATION_PX).solve(first.values()));
        double deviation_px = Math.max(LEAST_DEVIATION_PX, Leftovers.scatter_px(sightings, rough.view()));
        LeastSquares squares = squares(first, deviation_px);
        ViewParameters fine = first.with(squares.solve(rough.values()));
        return new FittedView(
                fine,
                squares.covariance(fine.values()),
                Leftovers.residual_px(sightings, fine.view()),
                sightings.size());
    }

    private LeastSquares squares(ViewParameters first, double deviation_px) {
        return new LeastSquares(
                values -> {
                    Leftovers leftovers = new Leftovers(2 * sightings.size() + ViewParameters.OF_LENS);
                    leftovers.put(guess, values);
                    leftovers.put(sightings, first.with(values).view(), deviation_px);
                    return leftovers.all();
                },
                ViewParameters.steps());
    }
}
