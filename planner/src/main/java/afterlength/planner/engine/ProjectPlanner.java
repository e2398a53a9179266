package afterlength.planner.engine;

import afterlength.planner.project.Distances;
import afterlength.planner.project.Project;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans a project of the open benchmarks through the engine that plans the bench, with an always open calendar. */
public final class ProjectPlanner {
    private ProjectPlanner() {}

    public static ProjectAnswer plan(Project project, Effort effort) {
        Optional<Distances> distances = Distances.of(project);
        if (distances.isEmpty()) {
            return new ProjectAnswer.Impossible("its longest and shortest distances contradict each other");
        }
        Optional<String> contradiction = Contradiction.find(project, distances.get());
        if (contradiction.isPresent()) {
            return new ProjectAnswer.Impossible(contradiction.get());
        }
        Network network = ProjectNetwork.of(project, distances.get());
        int bound = (int) Math.max(LowerBound.of(network), distances.get().lag(0, project.size() - 1));
        if (network.size == 0) {
            return new ProjectAnswer.Made(bound, List.of(0, bound), bound);
        }
        return Evolution.search(network, effort)
                .<ProjectAnswer>map(best -> made(best, bound))
                .orElseGet(ProjectAnswer.NotFound::new);
    }

    private static ProjectAnswer made(Candidate best, int bound) {
        int makespan = (int) Math.max(best.cost, bound);
        List<Integer> starts = new ArrayList<>();
        starts.add(0);
        for (int start : best.start) {
            starts.add(start);
        }
        starts.add(makespan);
        return new ProjectAnswer.Made(makespan, starts, bound);
    }
}
