package afterlength.planner.project;

import java.util.List;

/**
 * A project as the open benchmarks give it: activities of fixed duration, among them the start (first) and the end (last), with
 * amounts of renewable resources, and distances between starts. It is a workshop without hours, which shows whether the engine that
 * plans the bench is any good.
 *
 * @param demands amounts by activity and resource
 */
public record Project(
        List<Integer> durations, List<List<Integer>> demands, List<Integer> capacities, List<Distance> distances) {
    public Project {
        durations = List.copyOf(durations);
        demands = demands.stream().map(List::copyOf).toList();
        capacities = List.copyOf(capacities);
        distances = List.copyOf(distances);
    }

    /** Start of {@code to} is at least {@code lag} after the start of {@code from}; a negative lag bounds from above. */
    public record Distance(int from, int to, int lag) {}

    public int size() {
        return durations.size();
    }
}
