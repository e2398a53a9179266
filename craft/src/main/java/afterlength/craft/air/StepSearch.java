package afterlength.craft.air;

import afterlength.craft.wood.DryingLimit;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * Finds the steps of plate moisture that matter: within {@value #WINDOW_DAYS} days a fall or rise as large as the loss at which a
 * held spruce plate reaches its strength ({@link DryingLimit#lossByStrength_pct}). A step begins at the last extreme before it and ends
 * where the moisture turns. Readings whose start is not yet forgotten do not count. The window is our own choice: longer changes
 * leave the wood time to creep.
 */
final class StepSearch {
    static final int WINDOW_DAYS = 7;

    private static final long WINDOW_S = WINDOW_DAYS * 86_400L;

    private final PlateHistory history;
    private final double forgotten_h;
    private final double matters_pct = DryingLimit.lossByStrength_pct();
    private final List<MoistureStep> steps = new ArrayList<>();

    StepSearch(PlateHistory history, double forgotten_h) {
        this.history = history;
        this.forgotten_h = forgotten_h;
    }

    List<MoistureStep> find() {
        search(-1);
        search(+1);
        steps.sort(Comparator.comparingLong(MoistureStep::from_s));
        return List.copyOf(steps);
    }

    /** Looks one way: {@code sign} is −1 for falls, +1 for rises. */
    private void search(int sign) {
        Deque<Integer> extremes = new ArrayDeque<>();
        int n = 0;
        while (n < history.record().size()) {
            if (!counts(n)) {
                extremes.clear();
                n++;
                continue;
            }
            keep(extremes, n, sign);
            if (sign * (at(n) - at(extremes.getFirst())) >= matters_pct) {
                n = close(extremes.getFirst(), n, sign);
                extremes.clear();
            }
            n++;
        }
    }

    /** The readings of the window that may still be the start of a step, the farthest out first. */
    private void keep(Deque<Integer> extremes, int n, int sign) {
        while (!extremes.isEmpty() && moment_s(extremes.getFirst()) < moment_s(n) - WINDOW_S) {
            extremes.removeFirst();
        }
        while (!extremes.isEmpty() && sign * at(extremes.getLast()) >= sign * at(n)) {
            extremes.removeLast();
        }
        extremes.addLast(n);
    }

    /** Follows the step to where it turns by a tenth of itself, and returns its end. */
    private int close(int from, int reached, int sign) {
        int end = reached;
        for (int n = reached + 1; n < history.record().size() && counts(n); n++) {
            if (sign * at(n) > sign * at(end)) {
                end = n;
            } else if (sign * (at(end) - at(n)) > matters_pct / 10) {
                break;
            }
        }
        steps.add(new MoistureStep(moment_s(from), moment_s(end), at(from), at(end)));
        return end;
    }

    private boolean counts(int n) {
        return !Double.isNaN(at(n)) && history.sinceStart_h(n) >= forgotten_h;
    }

    private double at(int n) {
        return history.plate_pct(n);
    }

    private long moment_s(int n) {
        return history.record().moment_s(n);
    }
}
