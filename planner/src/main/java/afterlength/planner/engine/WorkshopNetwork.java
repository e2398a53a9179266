package afterlength.planner.engine;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Job;
import afterlength.planner.bench.Placed;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Span;
import afterlength.planner.bench.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A workshop as a network: resources are the kinds of clamps, the cupboard, and each instrument (one of it). What began before now in
 * the plan to keep stays where it is.
 */
final class WorkshopNetwork {
    /** Whole units of cost: 0.02 for an hour until ready is one unit a minute. */
    private static final long UNITS_PER_WEIGHTED_MINUTE = 50;

    private static final long UNITS_PER_READY_MINUTE = 1;
    static final double UNITS = 3000;
    private static final double GLUE_HALF_DAY = 3;

    /** A wait alone needs nobody, at any hour. */
    private static final int NOBODY = 0;

    private final Workshop workshop;
    private final NetworkDraft draft = new NetworkDraft();

    private WorkshopNetwork(Workshop workshop) {
        this.workshop = workshop;
    }

    static Network of(Workshop workshop, Optional<Plan> kept, double stability) {
        return new WorkshopNetwork(workshop).build(kept, stability);
    }

    private Network build(Optional<Plan> kept, double stability) {
        resources();
        people();
        jobs();
        for (BenchStep step : workshop.steps()) {
            add(step, kept);
            arcs(step);
        }
        return draft.from(workshop.now(), Math.round(stability * UNITS)).build();
    }

    private void resources() {
        int clamps = workshop.clampCapacity().size();
        int[] capacities = new int[clamps + 1 + workshop.jobs().size()];
        for (int kind = 0; kind < clamps; kind++) {
            capacities[kind] = workshop.clampCapacity().get(kind);
        }
        capacities[cupboard()] = workshop.cupboardCapacity();
        for (Job job : workshop.jobs()) {
            capacities[instrument(job.id())] = 1;
        }
        draft.capacities(capacities);
    }

    private int cupboard() {
        return workshop.clampCapacity().size();
    }

    private int instrument(int job) {
        return cupboard() + 1 + job;
    }

    private void people() {
        int[][] from = new int[workshop.personHours().size()][];
        int[][] to = new int[from.length][];
        for (int person = 0; person < from.length; person++) {
            List<Span> hours = hoursFromNow(workshop.personHours().get(person));
            from[person] = hours.stream().mapToInt(Span::from).toArray();
            to[person] = hours.stream().mapToInt(Span::to).toArray();
        }
        draft.hours(from, to);
        draft.glue(
                workshop.glueHalfDays().stream().mapToInt(Span::from).toArray(),
                workshop.glueHalfDays().stream().mapToInt(Span::to).toArray(),
                workshop.glueWarmUp(),
                Math.round(GLUE_HALF_DAY * UNITS));
    }

    /** Two stretches that touch are one: work may go on from the first into the second. */
    private List<Span> hoursFromNow(List<Span> hours) {
        List<Span> joined = new ArrayList<>();
        for (Span span : hours) {
            Span last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && last.to() == span.from()) {
                joined.set(joined.size() - 1, new Span(last.from(), span.to()));
            } else {
                joined.add(span);
            }
        }
        return joined;
    }

    private void jobs() {
        draft.jobs(
                workshop.jobs().stream().mapToLong(Job::due).toArray(),
                workshop.jobs().stream()
                        .mapToLong(job -> job.weight() * UNITS_PER_WEIGHTED_MINUTE)
                        .toArray(),
                UNITS_PER_READY_MINUTE);
    }

    private void add(BenchStep step, Optional<Plan> kept) {
        Job job = workshop.jobs().get(step.job());
        NetworkDraft.Activity activity = draft.add()
                .lasting(step.hands(), step.length())
                .of(job.id(), Math.max(job.release(), workshop.now()))
                .by(step.hands() == 0 ? NOBODY : step.persons(), step.samePersonAs())
                .withHotGlue(step.hotGlue())
                .using(cupboard(), step.cupboard(), step.hands(), step.length());
        if (step.clamp() >= 0) {
            activity.using(step.clamp(), step.clampQty(), 0, step.length());
        }
        if (step.holdsInstrument()) {
            activity.using(instrument(job.id()), 1, 0, step.length());
        }
        kept.map(plan -> plan.of(step)).ifPresent(place -> keep(activity, place));
    }

    private void keep(NetworkDraft.Activity activity, Placed place) {
        if (place.equals(Placed.NOWHERE)) {
            return;
        }
        if (place.start() < workshop.now()) {
            activity.begun(place.start(), place.person());
        } else {
            activity.kept(place.start());
        }
    }

    private void arcs(BenchStep step) {
        for (int before : step.after()) {
            draft.arc(before, step.id(), workshop.steps().get(before).length());
        }
        if (step.samePersonAs() >= 0) {
            // The first of them decides who does it, so it must be laid out first.
            draft.arc(
                    step.samePersonAs(),
                    step.id(),
                    workshop.steps().get(step.samePersonAs()).hands());
        }
        if (step.maxLagFrom() >= 0) {
            draft.arc(step.id(), step.maxLagFrom(), -step.maxLag());
        }
    }
}
