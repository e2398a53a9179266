package afterlength.sight.camera;

import java.util.List;

/** What is left over between a view and what was seen or guessed, each in its own deviation, in the making. */
final class Leftovers {
    private final double[] all;
    private int next;

    Leftovers(int count) {
        all = new double[count];
    }

    /** @param values of the lens, in the order of {@link ViewParameters} */
    void put(LensGuess guess, double[] values) {
        for (int n = 0; n < ViewParameters.OF_LENS; n++) {
            all[next++] = guess.get(n).distance(values[n]);
        }
    }

    void put(List<Sighting> sightings, View view, double deviation_px) {
        for (Sighting sighting : sightings) {
            Pixel expected = view.pixel(sighting.place(), 0);
            all[next++] = (expected.x() - sighting.seen().x()) / deviation_px;
            all[next++] = (expected.y() - sighting.seen().y()) / deviation_px;
        }
    }

    double[] all() {
        return all;
    }

    /** Per coordinate, with the eight freedoms of a plane's view taken off. */
    static double scatter_px(List<Sighting> sightings, View view) {
        return Math.sqrt(squares_px2(sightings, view) / Math.max(1, 2 * sightings.size() - 8));
    }

    static double residual_px(List<Sighting> sightings, View view) {
        return Math.sqrt(squares_px2(sightings, view) / sightings.size());
    }

    private static double squares_px2(List<Sighting> sightings, View view) {
        return sightings.stream()
                .mapToDouble(sighting -> view.pixel(sighting.place(), 0).distanceTo(sighting.seen()))
                .map(off_px -> off_px * off_px)
                .sum();
    }
}
