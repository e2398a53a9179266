package afterlength.planner.check;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Placed;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Span;
import afterlength.planner.bench.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds every broken rule of a plan, the plain way: each step by itself, each pair of steps, each moment at which something begins.
 * What was begun before now is not judged by hours and order any more, only by staying where it was.
 */
public final class PlanCheck {
    private final Workshop workshop;
    private final Plan plan;
    private final Optional<Plan> kept;
    private final List<BrokenRule> broken = new ArrayList<>();

    private PlanCheck(Workshop workshop, Plan plan, Optional<Plan> kept) {
        this.workshop = workshop;
        this.plan = plan;
        this.kept = kept;
    }

    /** Of a plan from nothing. */
    public static List<BrokenRule> of(Workshop workshop, Plan plan) {
        return of(workshop, plan, Optional.empty());
    }

    /** Of a plan that goes on from another. */
    public static List<BrokenRule> of(Workshop workshop, Plan plan, Optional<Plan> kept) {
        if (plan.placed().size() != workshop.steps().size()) {
            return List.of(new BrokenRule(Rule.COMPLETE, -1));
        }
        return new PlanCheck(workshop, plan, kept).check();
    }

    private List<BrokenRule> check() {
        for (BenchStep step : workshop.steps()) {
            if (isBegun(step)) {
                begun(step);
            } else {
                alone(step);
            }
        }
        pairs();
        for (int kind = 0; kind < workshop.clampCapacity().size(); kind++) {
            clamps(kind);
        }
        cupboard();
        return broken;
    }

    private boolean isBegun(BenchStep step) {
        return kept.map(old -> old.of(step).start() < workshop.now()).orElse(false);
    }

    private void begun(BenchStep step) {
        require(kept.orElseThrow().of(step).equals(at(step)), Rule.BEGUN_STAYS, step);
    }

    private void alone(BenchStep step) {
        int earliest = Math.max(workshop.now(), workshop.jobs().get(step.job()).release());
        require(start(step) >= earliest, Rule.NOT_BEFORE, step);
        int person = at(step).person();
        boolean known = person >= 0 && person < workshop.personHours().size();
        require(known && (step.persons() >> person & 1) == 1, Rule.RIGHT_PERSON, step);
        if (step.samePersonAs() >= 0) {
            require(at(other(step.samePersonAs())).person() == person, Rule.SAME_PERSON, step);
        }
        require(known && isInside(step, workshop.personHours().get(person)), Rule.IN_HOURS, step);
        if (step.hotGlue()) {
            require(isInHalfDay(step), Rule.HOT_GLUE, step);
        }
        for (int before : step.after()) {
            require(start(step) >= end(other(before)), Rule.ORDER, step, before);
        }
        if (step.maxLagFrom() >= 0 && !isBegun(other(step.maxLagFrom()))) {
            int since = start(step) - start(other(step.maxLagFrom()));
            require(since <= step.maxLag(), Rule.RECOAT_WINDOW, step, step.maxLagFrom());
        }
    }

    /** Stretches that touch count as one. */
    private boolean isInside(BenchStep step, List<Span> hours) {
        int reached = Integer.MIN_VALUE;
        for (Span span : hours) {
            if (span.from() <= start(step) && start(step) < span.to()) {
                reached = span.to();
            } else if (span.from() == reached) {
                reached = span.to();
            }
        }
        return step.hands() == 0 || start(step) + step.hands() <= reached;
    }

    private boolean isInHalfDay(BenchStep step) {
        return workshop.glueHalfDays().stream()
                .anyMatch(half ->
                        half.from() + workshop.glueWarmUp() <= start(step) && start(step) + step.hands() <= half.to());
    }

    private void pairs() {
        for (BenchStep one : workshop.steps()) {
            for (BenchStep two : workshop.steps().subList(0, one.id())) {
                if (isBegun(one) && isBegun(two)) {
                    continue;
                }
                boolean samePerson = at(one).person() == at(two).person();
                require(
                        !samePerson || apart(one, one.hands(), two, two.hands()),
                        Rule.ONE_THING_AT_A_TIME,
                        one,
                        two.id());
                boolean bothHold = one.job() == two.job() && one.holdsInstrument() && two.holdsInstrument();
                require(
                        !bothHold || apart(one, one.length(), two, two.length()),
                        Rule.ONE_ON_INSTRUMENT,
                        one,
                        two.id());
            }
        }
    }

    private boolean apart(BenchStep one, int oneLength, BenchStep two, int twoLength) {
        boolean empty = oneLength == 0 || twoLength == 0;
        return empty || start(one) + oneLength <= start(two) || start(two) + twoLength <= start(one);
    }

    private void clamps(int kind) {
        List<BenchStep> holding =
                workshop.steps().stream().filter(step -> step.clamp() == kind).toList();
        for (BenchStep step : holding) {
            int held = holding.stream()
                    .filter(each -> start(each) <= start(step) && start(step) < end(each))
                    .mapToInt(BenchStep::clampQty)
                    .sum();
            require(held <= workshop.clampCapacity().get(kind) || isBegun(step), Rule.CLAMPS, step);
        }
    }

    /** A place is held from when the hands let go. */
    private void cupboard() {
        for (BenchStep step : workshop.steps()) {
            int moment = start(step) + step.hands();
            int held = workshop.steps().stream()
                    .filter(each -> start(each) + each.hands() <= moment && moment < end(each))
                    .mapToInt(BenchStep::cupboard)
                    .sum();
            boolean holds = step.cupboard() > 0 && step.waits() > 0;
            require(!holds || held <= workshop.cupboardCapacity() || isBegun(step), Rule.CUPBOARD, step);
        }
    }

    private void require(boolean kept, Rule rule, BenchStep step) {
        require(kept, rule, step, -1);
    }

    private void require(boolean kept, Rule rule, BenchStep step, int other) {
        if (!kept) {
            broken.add(new BrokenRule(rule, step.id(), other));
        }
    }

    private BenchStep other(int id) {
        return workshop.steps().get(id);
    }

    private Placed at(BenchStep step) {
        return plan.of(step);
    }

    private int start(BenchStep step) {
        return at(step).start();
    }

    private int end(BenchStep step) {
        return start(step) + step.length();
    }
}
