package afterlength.planner.engine;

import afterlength.planner.project.Distances;
import afterlength.planner.project.Project;

/**
 * A project as a network: nobody's hands, no hours, one job that was due at once, so that its lateness is the makespan. The start
 * and the end of the project are no activities here; they become release dates, deadlines and the time until ready.
 */
final class ProjectNetwork {
    private final Project project;
    private final Distances distances;

    private ProjectNetwork(Project project, Distances distances) {
        this.project = project;
        this.distances = distances;
    }

    static Network of(Project project, Distances distances) {
        return new ProjectNetwork(project, distances).build();
    }

    private Network build() {
        NetworkDraft draft = new NetworkDraft();
        draft.capacities(
                project.capacities().stream().mapToInt(Integer::intValue).toArray());
        draft.jobs(new long[] {0}, new long[] {1}, 0);
        int end = project.size() - 1;
        for (int i = 1; i < end; i++) {
            int duration = project.durations().get(i);
            NetworkDraft.Activity activity = draft.add()
                    .lasting(duration, distances.lag(i, end))
                    .of(0, distances.lag(0, i))
                    .until(distances.lag(i, 0) <= Distances.NONE / 2 ? Lane.NEVER - 1 : -distances.lag(i, 0));
            for (int resource = 0; resource < project.capacities().size(); resource++) {
                activity.using(resource, project.demands().get(i).get(resource), 0, duration);
            }
        }
        arcs(draft, end);
        return draft.build();
    }

    /** Where there are longest distances, every implied distance helps to see early what cannot be met. */
    private void arcs(NetworkDraft draft, int end) {
        boolean onlyShortest = project.distances().stream().allMatch(each -> each.lag() >= 0);
        if (onlyShortest) {
            project.distances().stream()
                    .filter(each -> isInner(each.from(), end) && isInner(each.to(), end))
                    .forEach(each -> draft.arc(each.from() - 1, each.to() - 1, each.lag()));
            return;
        }
        for (int from = 1; from < end; from++) {
            for (int to = 1; to < end; to++) {
                if (from != to && distances.lag(from, to) > Distances.NONE / 2) {
                    draft.arc(from - 1, to - 1, distances.lag(from, to));
                }
            }
        }
    }

    private static boolean isInner(int activity, int end) {
        return activity > 0 && activity < end;
    }
}
