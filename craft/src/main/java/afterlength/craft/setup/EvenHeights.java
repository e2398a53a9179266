package afterlength.craft.setup;

import java.util.ArrayList;
import java.util.List;

/**
 * The most room that a few places of the bow can have in common, and the lowest inner strings that give it.
 *
 * <p>To reach a room, every inner string that lacks it is raised just enough, again and again, since each one raised takes a
 * little from its neighbours. The climb ends at the lowest heights that give the room, or leaves what is
 * permitted, or takes it from an outer string; in these cases it cannot be had.
 */
final class EvenHeights {
    private static final int MOST_HALVINGS = 60;
    private static final int MOST_SWEEPS = 200;
    private static final int MOST_TRIES = 60;
    /** A string's room changes by about 0.2 radians to the millimetre; both limits lie far below what can be cut or felt. */
    private static final double STILL_mm = 1e-7;

    private static final double ENOUGH_rad = 1e-9;

    private final StringRun[] lowest;
    private final double[] highest_mm;
    private final StringRun[] runs;
    private final BowContact contact;
    private final List<List<Played>> binding = new ArrayList<>();

    EvenHeights(BridgeInputs inputs, StringRun[] lowest, double[] highest_mm, List<Played> places) {
        this.lowest = lowest;
        this.highest_mm = highest_mm;
        runs = lowest.clone();
        contact = new BowContact(inputs, runs);
        for (int i = 0; i < runs.length; i++) {
            int string = i;
            binding.add(
                    places.stream().filter(place -> place.string() == string).toList());
        }
    }

    StringRun[] search() {
        double had_rad = tightest_rad();
        double beyond_rad = beyond_rad();
        StringRun[] best = lowest;
        for (int i = 0; i < MOST_HALVINGS && beyond_rad - had_rad > ENOUGH_rad; i++) {
            double asked_rad = (had_rad + beyond_rad) / 2;
            if (climb(best, asked_rad)) {
                had_rad = asked_rad;
                best = runs.clone();
            } else {
                beyond_rad = asked_rad;
            }
        }
        return best;
    }

    private double tightest_rad() {
        double least_rad = Double.POSITIVE_INFINITY;
        for (int i = 0; i < runs.length; i++) {
            least_rad = Math.min(least_rad, room_rad(i));
        }
        return least_rad;
    }

    private double room_rad(int string) {
        double least_rad = Double.POSITIVE_INFINITY;
        for (Played played : binding.get(string)) {
            least_rad = Math.min(least_rad, contact.limits(played).opening_rad());
        }
        return least_rad;
    }

    /** More than this no string could have, were it raised all the way and its neighbours not at all. */
    private double beyond_rad() {
        double least_rad = Double.POSITIVE_INFINITY;
        for (int i = 0; i < runs.length; i++) {
            least_rad = Math.min(least_rad, roomAt_rad(i, isInner(i) ? highest_mm[i] : runs[i].bridgeUnderside_mm()));
        }
        return least_rad;
    }

    private boolean isInner(int string) {
        return string > 0 && string < runs.length - 1;
    }

    private double roomAt_rad(int string, double underside_mm) {
        StringRun was = runs[string];
        runs[string] = was.withBridgeUnderside_mm(underside_mm);
        double room_rad = room_rad(string);
        runs[string] = was;
        return room_rad;
    }

    /** From the lowest heights that gave less room, for those that give more lie above them. */
    private boolean climb(StringRun[] from, double asked_rad) {
        System.arraycopy(from, 0, runs, 0, runs.length);
        double moved_mm = Double.POSITIVE_INFINITY;
        for (int sweep = 0; sweep < MOST_SWEEPS && moved_mm > STILL_mm; sweep++) {
            moved_mm = 0;
            for (int i = 1; i < runs.length - 1; i++) {
                if (roomAt_rad(i, highest_mm[i]) < asked_rad) {
                    return false;
                }
                moved_mm = Math.max(moved_mm, lift(i, asked_rad));
            }
            if (room_rad(0) < asked_rad || room_rad(runs.length - 1) < asked_rad) {
                return false;
            }
        }
        return true;
    }

    /** Raises one string until it has the room asked for, by regula falsi; returns how far. */
    private double lift(int string, double asked_rad) {
        double low_mm = runs[string].bridgeUnderside_mm();
        double lacks_rad = roomAt_rad(string, low_mm) - asked_rad;
        if (lacks_rad >= -ENOUGH_rad) {
            return 0;
        }
        double start_mm = low_mm;
        double high_mm = highest_mm[string];
        double spare_rad = roomAt_rad(string, high_mm) - asked_rad;
        for (int i = 0; i < MOST_TRIES && spare_rad > ENOUGH_rad && high_mm - low_mm > STILL_mm; i++) {
            double next_mm = low_mm + (high_mm - low_mm) * -lacks_rad / (spare_rad - lacks_rad);
            double next_rad = roomAt_rad(string, next_mm) - asked_rad;
            if (next_rad >= 0) {
                high_mm = next_mm;
                spare_rad = next_rad;
                lacks_rad /= 2;
            } else {
                low_mm = next_mm;
                lacks_rad = next_rad;
                spare_rad /= 2;
            }
        }
        runs[string] = runs[string].withBridgeUnderside_mm(high_mm);
        return high_mm - start_mm;
    }
}
