package afterlength.planner.reason;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Span;
import afterlength.planner.bench.Workshop;
import afterlength.planner.check.Rule;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What stands in the way of one step at another minute, all other steps staying where the plan has them. */
final class Obstacles {
    /** Nothing in particular holds it but the rule itself. */
    private static final int NOBODY = -1;

    private final Workshop workshop;
    private final Plan plan;
    private final BenchStep step;
    private final List<BenchStep> others;

    Obstacles(Workshop workshop, Plan plan, BenchStep step) {
        this.workshop = workshop;
        this.plan = plan;
        this.step = step;
        this.others = new ArrayList<>(workshop.steps());
        this.others.remove(step.id());
    }

    /** The rules broken by starting at this minute, each with the last step that would break it, or -1. */
    Map<Rule, Integer> at(int minute) {
        Map<Rule, Integer> found = new EnumMap<>(Rule.class);
        if (minute < Math.max(workshop.now(), workshop.jobs().get(step.job()).release())) {
            found.put(Rule.NOT_BEFORE, NOBODY);
        }
        if (step.hands() > 0 && workshop.personHours().get(person()).stream().noneMatch(span -> holds(span, minute))) {
            found.put(Rule.IN_HOURS, NOBODY);
        }
        if (step.hotGlue() && workshop.glueHalfDays().stream().noneMatch(half -> isHot(half, minute))) {
            found.put(Rule.HOT_GLUE, NOBODY);
        }
        order(minute, found);
        otherSteps(minute, found);
        amounts(minute, found);
        return found;
    }

    private void order(int minute, Map<Rule, Integer> found) {
        for (int before : step.after()) {
            if (end(workshop.steps().get(before)) > minute) {
                found.merge(Rule.ORDER, before, this::later);
            }
        }
        for (BenchStep follower : others) {
            if (follower.maxLagFrom() == step.id() && start(follower) - minute > follower.maxLag()) {
                found.put(Rule.RECOAT_WINDOW, follower.id());
            }
        }
    }

    private void otherSteps(int minute, Map<Rule, Integer> found) {
        for (BenchStep other : others) {
            boolean samePerson = plan.of(other).person() == person();
            if (samePerson && overlap(minute, step.hands(), start(other), other.hands())) {
                found.merge(Rule.ONE_THING_AT_A_TIME, other.id(), this::later);
            }
            boolean bothHold = other.job() == step.job() && other.holdsInstrument() && step.holdsInstrument();
            if (bothHold && overlap(minute, step.length(), start(other), other.length())) {
                found.merge(Rule.ONE_ON_INSTRUMENT, other.id(), this::later);
            }
        }
    }

    private void amounts(int minute, Map<Rule, Integer> found) {
        if (step.clamp() >= 0) {
            List<BenchStep> holding = others.stream()
                    .filter(other -> other.clamp() == step.clamp())
                    .filter(other -> overlap(minute, step.length(), start(other), other.length()))
                    .toList();
            int most = holding.stream()
                    .mapToInt(one -> holding.stream()
                            .filter(other -> isOn(start(other), other.length(), Math.max(minute, start(one))))
                            .mapToInt(BenchStep::clampQty)
                            .sum())
                    .max()
                    .orElse(0);
            if (most + step.clampQty() > workshop.clampCapacity().get(step.clamp())) {
                found.put(Rule.CLAMPS, last(holding));
            }
        }
        if (step.cupboard() > 0 && step.waits() > 0) {
            cupboard(minute + step.hands(), found);
        }
    }

    private void cupboard(int from, Map<Rule, Integer> found) {
        List<BenchStep> drying = others.stream()
                .filter(other -> other.cupboard() > 0)
                .filter(other -> overlap(from, step.waits(), start(other) + other.hands(), other.waits()))
                .toList();
        int most = drying.stream()
                .mapToInt(one -> drying.stream()
                        .filter(other -> isOn(
                                start(other) + other.hands(), other.waits(), Math.max(from, start(one) + one.hands())))
                        .mapToInt(BenchStep::cupboard)
                        .sum())
                .max()
                .orElse(0);
        if (most + step.cupboard() > workshop.cupboardCapacity()) {
            found.put(Rule.CUPBOARD, last(drying));
        }
    }

    private int last(List<BenchStep> steps) {
        return steps.stream().map(BenchStep::id).reduce(this::later).orElse(NOBODY);
    }

    private int later(int one, int other) {
        return end(workshop.steps().get(one)) >= end(workshop.steps().get(other)) ? one : other;
    }

    private boolean holds(Span span, int minute) {
        return span.from() <= minute && minute + step.hands() <= span.to();
    }

    private boolean isHot(Span half, int minute) {
        return half.from() + workshop.glueWarmUp() <= minute && minute + step.hands() <= half.to();
    }

    private static boolean overlap(int one, int oneLength, int other, int otherLength) {
        return oneLength > 0 && otherLength > 0 && one < other + otherLength && other < one + oneLength;
    }

    private static boolean isOn(int start, int length, int moment) {
        return start <= moment && moment < start + length;
    }

    private int person() {
        return plan.of(step).person();
    }

    private int start(BenchStep other) {
        return plan.of(other).start();
    }

    private int end(BenchStep other) {
        return start(other) + other.length();
    }
}
