package afterlength.planner.project;

import java.util.Optional;

/** The longest ways between all activities of a project (Floyd and Warshall, docs/sources.md#floyd-1962). */
public final class Distances {
    /** Said of two activities with no way from one to the other. */
    public static final int NONE = Integer.MIN_VALUE / 4;

    private final int[][] lag;

    private Distances(int[][] lag) {
        this.lag = lag;
    }

    /** Empty when an activity would have to start after itself: then the project cannot be done at all. */
    public static Optional<Distances> of(Project project) {
        int size = project.size();
        int[][] lag = new int[size][size];
        for (int i = 0; i < size; i++) {
            java.util.Arrays.fill(lag[i], NONE);
            lag[i][i] = 0;
            lag[0][i] = 0;
            lag[i][size - 1] = Math.max(lag[i][size - 1], project.durations().get(i));
        }
        for (Project.Distance each : project.distances()) {
            lag[each.from()][each.to()] = Math.max(lag[each.from()][each.to()], each.lag());
        }
        close(lag);
        for (int i = 0; i < size; i++) {
            if (lag[i][i] > 0) {
                return Optional.empty();
            }
        }
        return Optional.of(new Distances(lag));
    }

    static void close(int[][] lag) {
        int size = lag.length;
        for (int by = 0; by < size; by++) {
            for (int from = 0; from < size; from++) {
                if (lag[from][by] > NONE / 2) {
                    for (int to = 0; to < size; to++) {
                        if (lag[by][to] > NONE / 2) {
                            lag[from][to] = Math.max(lag[from][to], lag[from][by] + lag[by][to]);
                        }
                    }
                }
            }
        }
    }

    public int lag(int from, int to) {
        return lag[from][to];
    }

    public int[][] copy() {
        int[][] copy = new int[lag.length][];
        for (int i = 0; i < lag.length; i++) {
            copy[i] = lag[i].clone();
        }
        return copy;
    }
}
