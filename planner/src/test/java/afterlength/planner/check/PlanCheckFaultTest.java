package afterlength.planner.check;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.planner.Instances;
import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Placed;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Faults planted one by one into plans that are right: the checker finds each, by its name. */
class PlanCheckFaultTest {
    private int planted;
    private final Set<Rule> seen = new TreeSet<>();

    @Test
    void findsEveryPlantedFault() {
        for (String name : Instances.TINY) {
            Workshop workshop = Instances.workshop(name);
            Plan plan = Instances.optimalPlan(name);
            for (BenchStep step : workshop.steps()) {
                plantInto(workshop, plan, step);
            }
            scarceThings(workshop, plan);
        }
        assertThat(planted).isGreaterThanOrEqualTo(1000);
        assertThat(seen)
                .contains(Rule.values())
                .as("every rule was broken at least once")
                .hasSize(Rule.values().length);
    }

    private void plantInto(Workshop workshop, Plan plan, BenchStep step) {
        Placed place = plan.of(step);
        expect(Rule.NOT_BEFORE, workshop, moved(plan, step, workshop.now() - 5, place.person()));
        expect(Rule.RIGHT_PERSON, workshop, moved(plan, step, place.start(), 7));
        expect(Rule.IN_HOURS, workshop, moved(plan, step, 24 * 60 - 1, place.person()));
        int closing = workshop.personHours().get(place.person()).get(0).to();
        expect(Rule.IN_HOURS, workshop, moved(plan, step, closing - step.hands() + 5, place.person()));
        if (step.hotGlue()) {
            int opening = workshop.glueHalfDays().get(0).from();
            expect(Rule.HOT_GLUE, workshop, moved(plan, step, opening + workshop.glueWarmUp() - 5, place.person()));
        }
        for (int before : step.after()) {
            int end = plan.placed().get(before).start()
                    + workshop.steps().get(before).length();
            expect(Rule.ORDER, workshop, moved(plan, step, end - 5, place.person()));
        }
        if (step.maxLagFrom() >= 0) {
            int last = plan.placed().get(step.maxLagFrom()).start() + step.maxLag();
            expect(Rule.RECOAT_WINDOW, workshop, moved(plan, step, last + 5, place.person()));
        }
        if (step.samePersonAs() >= 0) {
            int other = 1 - plan.placed().get(step.samePersonAs()).person();
            expect(Rule.SAME_PERSON, workshop, moved(plan, step, place.start(), other));
        }
        onTopOfOthers(workshop, plan, step);
        begun(workshop, plan, step);
    }

    private void onTopOfOthers(Workshop workshop, Plan plan, BenchStep step) {
        for (BenchStep other : workshop.steps()) {
            Placed there = plan.of(other);
            if (other.id() != step.id() && other.id() % 5 == step.id() % 5) {
                expect(Rule.ONE_THING_AT_A_TIME, workshop, moved(plan, step, there.start(), there.person()));
            }
            boolean bothHold = other.job() == step.job() && other.holdsInstrument() && step.holdsInstrument();
            if (other.id() != step.id() && bothHold && other.id() % 5 == step.id() % 5) {
                int inside = there.start() + other.length() - 5;
                expect(Rule.ONE_ON_INSTRUMENT, workshop, moved(plan, step, inside, there.person()));
            }
        }
    }

    private void begun(Workshop workshop, Plan plan, BenchStep step) {
        Workshop later = at(workshop, plan.of(step).start() + 1);
        Plan changed =
                moved(plan, step, plan.of(step).start() + 60, plan.of(step).person());
        planted++;
        assertThat(PlanCheck.of(later, changed, java.util.Optional.of(plan)))
                .extracting(BrokenRule::rule)
                .contains(Rule.BEGUN_STAYS);
        seen.add(Rule.BEGUN_STAYS);
    }

    /** The same plan in a workshop that has too little of something, and a plan with a step missing. */
    private void scarceThings(Workshop workshop, Plan plan) {
        if (workshop.steps().stream().anyMatch(step -> step.clamp() >= 0)) {
            expect(Rule.CLAMPS, with(workshop, List.of(0, 0, 0), workshop.cupboardCapacity()), plan);
        }
        if (workshop.steps().stream().anyMatch(step -> step.cupboard() > 0)) {
            expect(Rule.CUPBOARD, with(workshop, workshop.clampCapacity(), 0), plan);
        }
        expect(
                Rule.COMPLETE,
                workshop,
                new Plan(plan.placed().subList(1, plan.placed().size())));
    }

    private void expect(Rule rule, Workshop workshop, Plan plan) {
        planted++;
        seen.add(rule);
        assertThat(PlanCheck.of(workshop, plan)).extracting(BrokenRule::rule).contains(rule);
    }

    private static Plan moved(Plan plan, BenchStep step, int start, int person) {
        List<Placed> placed = new ArrayList<>(plan.placed());
        placed.set(step.id(), new Placed(start, person));
        return new Plan(placed);
    }

    private static Workshop with(Workshop workshop, List<Integer> clamps, int cupboard) {
        return new Workshop(
                workshop.now(),
                workshop.horizon(),
                workshop.personHours(),
                workshop.glueHalfDays(),
                workshop.glueWarmUp(),
                clamps,
                cupboard,
                workshop.jobs(),
                workshop.steps());
    }

    private static Workshop at(Workshop workshop, int now) {
        return new Workshop(
                now,
                workshop.horizon(),
                workshop.personHours(),
                workshop.glueHalfDays(),
                workshop.glueWarmUp(),
                workshop.clampCapacity(),
                workshop.cupboardCapacity(),
                workshop.jobs(),
                workshop.steps());
    }
}
