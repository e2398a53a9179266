package afterlength.planner.engine;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Job;
import afterlength.planner.bench.Placed;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Span;
import afterlength.planner.bench.Workshop;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A whole workshop as a model for a constraint solver, with the same rules and the same cost as the plan's, written from the
 * document's meaning and not from the engine. Only plans from nothing: no step may have begun.
 */
public final class CpSatWorkshop {
    /** All times are whole multiples of five minutes. */
    private static final int GRAIN = 5;

    /** One ready minute costs 0.02/60; in this many parts of 1 every term of the cost is a whole number. */
    private static final int PARTS = 3000;

    private static final int PER_READY_MINUTE = 1;
    private static final int PER_LATE_MINUTE = PARTS / 60;
    private static final int PER_HEATED = 3 * PARTS;

    /**
     * What it found.
     *
     * @param bound no plan costs less; equal to the cost when the plan is proven the best
     */
    public record Answer(Plan plan, double bound, boolean proven) {}

    private final CpModel model = new CpModel();
    private final Workshop workshop;
    private final List<IntVar> starts = new ArrayList<>();
    private final List<List<BoolVar>> persons = new ArrayList<>();

    private CpSatWorkshop(Workshop workshop) {
        this.workshop = workshop;
    }

    /** The best plan found in this time on so many threads. */
    public static Optional<Answer> plan(Workshop workshop, double seconds, int threads) {
        return new CpSatWorkshop(workshop).solve(seconds, threads);
    }

    private Optional<Answer> solve(double seconds, int threads) {
        workshop.steps().forEach(this::declare);
        workshop.steps().forEach(this::order);
        for (int person = 0; person < workshop.personHours().size(); person++) {
            oneThingAtATime(person);
        }
        workshop.jobs().forEach(this::oneOnInstrument);
        for (int kind = 0; kind < workshop.clampCapacity().size(); kind++) {
            clamps(kind);
        }
        cupboard();
        LinearExprBuilder cost = LinearExpr.newBuilder();
        heat(cost);
        workshop.jobs().forEach(job -> ready(job, cost));
        model.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setNumWorkers(threads)
                .setMaxTimeInSeconds(seconds)
                .setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        if (status != CpSolverStatus.OPTIMAL && status != CpSolverStatus.FEASIBLE) {
            return Optional.empty();
        }
        return Optional.of(
                new Answer(read(solver), solver.bestObjectiveBound() / PARTS, status == CpSolverStatus.OPTIMAL));
    }

    private Plan read(CpSolver solver) {
        List<Placed> placed = new ArrayList<>();
        for (BenchStep step : workshop.steps()) {
            List<BoolVar> who = persons.get(step.id());
            int person = 0;
            while (!solver.booleanValue(who.get(person))) {
                person++;
            }
            placed.add(new Placed((int) solver.value(starts.get(step.id())) * GRAIN, person));
        }
        return new Plan(placed);
    }

    private void declare(BenchStep step) {
        int earliest = Math.max(workshop.now(), workshop.jobs().get(step.job()).release());
        IntVar start = model.newIntVar(grains(earliest, 1), grains(workshop.horizon(), 0), "start" + step.id());
        List<BoolVar> who = new ArrayList<>();
        for (int person = 0; person < workshop.personHours().size(); person++) {
            BoolVar does = model.newBoolVar("does" + step.id() + "_" + person);
            model.addLinearExpressionInDomain(
                            start, within(workshop.personHours().get(person), step.hands(), 0))
                    .onlyEnforceIf(does);
            if ((step.persons() >> person & 1) == 0) {
                model.addEquality(does, 0);
            }
            who.add(does);
        }
        model.addExactlyOne(who.toArray(Literal[]::new));
        starts.add(start);
        persons.add(who);
    }

    private static long grains(int minutes, int up) {
        return Math.floorDiv(minutes + up * (GRAIN - 1), GRAIN);
    }

    /** The starts from which so many minutes fit into one stretch, which begins later by the warming up. Stretches that touch are one. */
    private static Domain within(List<Span> stretches, int minutes, int warmUp) {
        List<Span> joined = new ArrayList<>();
        for (Span span : stretches) {
            Span last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (warmUp == 0 && last != null && last.to() == span.from()) {
                joined.set(joined.size() - 1, new Span(last.from(), span.to()));
            } else {
                joined.add(span);
            }
        }
        return Domain.fromIntervals(joined.stream()
                .filter(span -> span.from() + warmUp + minutes <= span.to())
                .map(span -> new long[] {grains(span.from() + warmUp, 1), grains(span.to() - minutes, 0)})
                .toArray(long[][]::new));
    }

    private void order(BenchStep step) {
        for (int before : step.after()) {
            model.addGreaterOrEqual(
                    starts.get(step.id()),
                    LinearExpr.affine(
                            starts.get(before),
                            1,
                            grains(workshop.steps().get(before).length(), 1)));
        }
        if (step.maxLagFrom() >= 0) {
            model.addLessOrEqual(
                    starts.get(step.id()),
                    LinearExpr.affine(starts.get(step.maxLagFrom()), 1, grains(step.maxLag(), 0)));
        }
        if (step.samePersonAs() >= 0) {
            for (int person = 0; person < workshop.personHours().size(); person++) {
                model.addEquality(
                        persons.get(step.id()).get(person),
                        persons.get(step.samePersonAs()).get(person));
            }
        }
    }

    private void oneThingAtATime(int person) {
        model.addNoOverlap(workshop.steps().stream()
                .filter(step -> step.hands() > 0)
                .map(step -> model.newOptionalFixedSizeIntervalVar(
                        starts.get(step.id()),
                        grains(step.hands(), 1),
                        persons.get(step.id()).get(person),
                        "hands" + step.id() + "_" + person))
                .toArray(IntervalVar[]::new));
    }

    private void oneOnInstrument(Job job) {
        model.addNoOverlap(workshop.steps().stream()
                .filter(step -> step.job() == job.id() && step.holdsInstrument() && step.length() > 0)
                .map(this::whole)
                .toArray(IntervalVar[]::new));
    }

    private IntervalVar whole(BenchStep step) {
        return model.newFixedSizeIntervalVar(starts.get(step.id()), grains(step.length(), 1), "whole" + step.id());
    }

    private void clamps(int kind) {
        CumulativeConstraint most = model.addCumulative(workshop.clampCapacity().get(kind));
        workshop.steps().stream()
                .filter(step -> step.clamp() == kind)
                .forEach(step -> most.addDemand(whole(step), step.clampQty()));
    }

    private void cupboard() {
        CumulativeConstraint most = model.addCumulative(workshop.cupboardCapacity());
        for (BenchStep step : workshop.steps()) {
            if (step.cupboard() > 0 && step.waits() > 0) {
                LinearExpr from = LinearExpr.affine(starts.get(step.id()), 1, grains(step.hands(), 1));
                most.addDemand(
                        model.newFixedSizeIntervalVar(from, grains(step.waits(), 1), "drying" + step.id()),
                        step.cupboard());
            }
        }
    }

    private void heat(LinearExprBuilder cost) {
        List<BoolVar> heated = new ArrayList<>();
        for (int half = 0; half < workshop.glueHalfDays().size(); half++) {
            heated.add(model.newBoolVar("heated" + half));
            cost.addTerm(heated.get(half), PER_HEATED);
        }
        workshop.steps().stream().filter(BenchStep::hotGlue).forEach(step -> glue(step, heated));
    }

    private void glue(BenchStep step, List<BoolVar> heated) {
        List<Literal> chosen = new ArrayList<>();
        for (int half = 0; half < heated.size(); half++) {
            BoolVar here = model.newBoolVar("glue" + step.id() + "_" + half);
            model.addLinearExpressionInDomain(
                            starts.get(step.id()),
                            within(List.of(workshop.glueHalfDays().get(half)), step.hands(), workshop.glueWarmUp()))
                    .onlyEnforceIf(here);
            model.addImplication(here, heated.get(half));
            chosen.add(here);
        }
        model.addExactlyOne(chosen.toArray(Literal[]::new));
    }

    private void ready(Job job, LinearExprBuilder cost) {
        long now = grains(workshop.now(), 1);
        IntVar ready = model.newIntVar(now, 3 * grains(workshop.horizon(), 1), "ready" + job.id());
        for (BenchStep step : workshop.steps()) {
            if (step.job() == job.id()) {
                model.addGreaterOrEqual(ready, LinearExpr.affine(starts.get(step.id()), 1, grains(step.length(), 1)));
            }
        }
        IntVar late = model.newIntVar(0, 3 * grains(workshop.horizon(), 1), "late" + job.id());
        model.addGreaterOrEqual(late, LinearExpr.affine(ready, 1, -grains(job.due(), 0)));
        cost.addTerm(late, (long) job.weight() * PER_LATE_MINUTE * GRAIN);
        cost.addTerm(ready, (long) PER_READY_MINUTE * GRAIN);
        cost.add(-now * PER_READY_MINUTE * GRAIN);
    }
}
