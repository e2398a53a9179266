package afterlength.planner.check;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Job;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What a plan costs: for each job its weight times the hours it is late and 0.02 for each hour until it is ready, and 3 for each
 * half-day on which the glue pot is heated. The three figures are our own choice: a heated half-day may delay one instrument of
 * weight 1 by three hours, and being ready sooner counts only between plans that are otherwise alike.
 */
public final class PlanCost {
    private static final double PER_READY_HOUR = 0.02;
    private static final double PER_HEATED_HALF_DAY = 3;
    private static final double HOUR = 60;

    private final Workshop workshop;
    private final Plan plan;

    private PlanCost(Workshop workshop, Plan plan) {
        this.workshop = workshop;
        this.plan = plan;
    }

    public static double of(Workshop workshop, Plan plan) {
        PlanCost cost = new PlanCost(workshop, plan);
        return workshop.jobs().stream().mapToDouble(cost::of).sum()
                + PER_HEATED_HALF_DAY * cost.heatedHalfDays().size();
    }

    /** When the last step of a job has ended, its wait included. */
    public static int ready(Workshop workshop, Plan plan, Job job) {
        return workshop.steps().stream()
                .filter(step -> step.job() == job.id())
                .mapToInt(step -> plan.of(step).start() + step.length())
                .max()
                .orElse(workshop.now());
    }

    /** Jobs that are not ready when promised. */
    public static List<Job> late(Workshop workshop, Plan plan) {
        return workshop.jobs().stream()
                .filter(job -> ready(workshop, plan, job) > job.due())
                .toList();
    }

    private double of(Job job) {
        int ready = Math.max(workshop.now(), ready(workshop, plan, job));
        return job.weight() * Math.max(0, ready - job.due()) / HOUR + PER_READY_HOUR * (ready - workshop.now()) / HOUR;
    }

    private Set<Integer> heatedHalfDays() {
        Set<Integer> heated = new HashSet<>();
        for (BenchStep step : workshop.steps()) {
            int start = plan.of(step).start();
            for (int half = 0; half < workshop.glueHalfDays().size() && step.hotGlue(); half++) {
                if (workshop.glueHalfDays().get(half).from() <= start
                        && start < workshop.glueHalfDays().get(half).to()) {
                    heated.add(half);
                }
            }
        }
        return heated;
    }
}
