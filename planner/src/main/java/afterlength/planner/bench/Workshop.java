package afterlength.planner.bench;

import java.util.List;

/**
 * A workshop and all that has to be done in it, in minutes from a Monday 00:00. Identifiers of jobs and steps are their places in the lists.
 *
 * @param personHours for each person the stretches of working time, in order
 * @param glueHalfDays the stretches during which glue can be kept hot, in order
 * @param glueWarmUp minutes from the beginning of a half-day until the pot is hot
 * @param clampCapacity how many clamps there are of each kind
 */
public record Workshop(
        int now,
        int horizon,
        List<List<Span>> personHours,
        List<Span> glueHalfDays,
        int glueWarmUp,
        List<Integer> clampCapacity,
        int cupboardCapacity,
        List<Job> jobs,
        List<BenchStep> steps) {
    public Workshop {
        personHours = personHours.stream().map(List::copyOf).toList();
        glueHalfDays = List.copyOf(glueHalfDays);
        clampCapacity = List.copyOf(clampCapacity);
        jobs = List.copyOf(jobs);
        steps = List.copyOf(steps);
    }
}
