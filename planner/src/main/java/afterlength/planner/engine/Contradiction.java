package afterlength.planner.engine;

import afterlength.planner.project.Distances;
import afterlength.planner.project.Project;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Proves that a project has no plan, where pairs suffice for a proof: two activities that need more of a resource than there is must
 * not overlap, so one ends before the other begins. Where neither order fits the distances there is no plan; where one order does
 * not fit, the other is certain and tightens the distances; where both fit, both are tried as deep as the effort goes. Finding
 * nothing proves nothing.
 */
final class Contradiction {
    /** Pairs tried both ways before giving up. */
    private static final int MOST_TRIALS = 400;

    private final Project project;
    private final List<int[]> pairs = new ArrayList<>();
    private int trials;

    private Contradiction(Project project) {
        this.project = project;
    }

    static Optional<String> find(Project project, Distances distances) {
        Contradiction search = new Contradiction(project);
        Optional<String> alone = search.needsMoreThanThereIs();
        boolean bounded = project.distances().stream().anyMatch(each -> each.lag() < 0);
        if (alone.isPresent() || !bounded) {
            return alone;
        }
        search.collectPairs();
        return search.isImpossible(distances.copy())
                ? Optional.of(
                        "whatever the order of the activities that cannot go on at once, a longest distance is broken")
                : Optional.empty();
    }

    private Optional<String> needsMoreThanThereIs() {
        for (int i = 0; i < project.size(); i++) {
            for (int resource = 0; resource < project.capacities().size(); resource++) {
                int wanted = project.demands().get(i).get(resource);
                if (wanted > project.capacities().get(resource)
                        && project.durations().get(i) > 0) {
                    return Optional.of("activity " + i + " needs " + wanted + " of resource " + (resource + 1)
                            + ", and there is " + project.capacities().get(resource));
                }
            }
        }
        return Optional.empty();
    }

    private void collectPairs() {
        for (int i = 0; i < project.size(); i++) {
            for (int j = i + 1; j < project.size(); j++) {
                if (tooMuchTogether(i, j)) {
                    pairs.add(new int[] {i, j});
                }
            }
        }
    }

    private boolean tooMuchTogether(int i, int j) {
        if (project.durations().get(i) == 0 || project.durations().get(j) == 0) {
            return false;
        }
        for (int resource = 0; resource < project.capacities().size(); resource++) {
            int both = project.demands().get(i).get(resource)
                    + project.demands().get(j).get(resource);
            if (both > project.capacities().get(resource)) {
                return true;
            }
        }
        return false;
    }

    private boolean isImpossible(int[][] lag) {
        if (!tighten(lag)) {
            return true;
        }
        int[] open = openPair(lag);
        if (open.length == 0 || ++trials > MOST_TRIALS) {
            return false;
        }
        return isImpossibleWith(lag, open[0], open[1]) && isImpossibleWith(lag, open[1], open[0]);
    }

    private boolean isImpossibleWith(int[][] lag, int first, int second) {
        int[][] copy = new int[lag.length][];
        for (int i = 0; i < lag.length; i++) {
            copy[i] = lag[i].clone();
        }
        order(copy, first, second);
        return isImpossible(copy);
    }

    /** Orders every pair that can go only one way; false when one can go neither way. */
    private boolean tighten(int[][] lag) {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int[] pair : pairs) {
                boolean forwards = fits(lag, pair[0], pair[1]);
                boolean backwards = fits(lag, pair[1], pair[0]);
                if (!forwards && !backwards) {
                    return false;
                }
                if (forwards != backwards && !isOrdered(lag, pair)) {
                    order(lag, forwards ? pair[0] : pair[1], forwards ? pair[1] : pair[0]);
                    changed = true;
                }
            }
        }
        return true;
    }

    private boolean fits(int[][] lag, int first, int second) {
        return lag[second][first] + project.durations().get(first) <= 0;
    }

    private boolean isOrdered(int[][] lag, int[] pair) {
        return lag[pair[0]][pair[1]] >= project.durations().get(pair[0])
                || lag[pair[1]][pair[0]] >= project.durations().get(pair[1]);
    }

    /** The pair not ordered yet with the least room for both orders together. */
    private int[] openPair(int[][] lag) {
        int[] found = {};
        int least = Integer.MAX_VALUE;
        for (int[] pair : pairs) {
            int room = -Math.max(lag[pair[0]][pair[1]], Distances.NONE / 4)
                    - Math.max(lag[pair[1]][pair[0]], Distances.NONE / 4);
            if (!isOrdered(lag, pair) && room < least) {
                least = room;
                found = pair;
            }
        }
        return found;
    }

    /** Puts one before the other and draws all conclusions. */
    private void order(int[][] lag, int first, int second) {
        int by = Math.max(lag[first][second], project.durations().get(first));
        for (int from = 0; from < lag.length; from++) {
            if (lag[from][first] > Distances.NONE / 2) {
                for (int to = 0; to < lag.length; to++) {
                    if (lag[second][to] > Distances.NONE / 2) {
                        lag[from][to] = Math.max(lag[from][to], lag[from][first] + by + lag[second][to]);
                    }
                }
            }
        }
    }
}
