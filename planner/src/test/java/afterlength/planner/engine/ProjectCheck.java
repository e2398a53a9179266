package afterlength.planner.engine;

import afterlength.planner.project.Project;
import java.util.ArrayList;
import java.util.List;

/** Judges a plan of a project minute by minute; the plain second way. */
final class ProjectCheck {
    private ProjectCheck() {}

    static List<String> of(Project project, List<Integer> starts) {
        List<String> broken = new ArrayList<>();
        for (Project.Distance each : project.distances()) {
            if (starts.get(each.to()) - starts.get(each.from()) < each.lag()) {
                broken.add("distance " + each);
            }
        }
        int end = starts.get(starts.size() - 1);
        for (int resource = 0; resource < project.capacities().size(); resource++) {
            for (int minute = 0; minute < end; minute++) {
                if (used(project, starts, resource, minute)
                        > project.capacities().get(resource)) {
                    broken.add("resource " + resource + " at " + minute);
                }
            }
        }
        return broken;
    }

    private static int used(Project project, List<Integer> starts, int resource, int minute) {
        int used = 0;
        for (int i = 0; i < project.size(); i++) {
            if (starts.get(i) <= minute
                    && minute < starts.get(i) + project.durations().get(i)) {
                used += project.demands().get(i).get(resource);
            }
        }
        return used;
    }
}
