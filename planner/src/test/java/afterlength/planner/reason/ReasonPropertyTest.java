package afterlength.planner.reason;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.planner.Instances;
import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Placed;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import afterlength.planner.check.BrokenRule;
import afterlength.planner.check.PlanCheck;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Leaving the named rules aside really lets the step begin earlier: the checker then finds nothing else to object to. */
class ReasonPropertyTest {
    static final List<String> TINY = Instances.TINY;

    @ParameterizedTest
    @FieldSource("TINY")
    void withoutTheNamedRulesTheStepBeginsEarlier(String name) {
        Workshop workshop = Instances.workshop(name);
        Plan plan = Instances.optimalPlan(name);
        for (BenchStep step : workshop.steps()) {
            Reason.find(workshop, plan, step).ifPresent(reason -> {
                assertThat(reason.withoutThem()).isLessThan(reason.start());
                assertThat(brokenAt(workshop, plan, step, reason.withoutThem()))
                        .as(name + " step " + step.id())
                        .containsExactlyInAnyOrderElementsOf(reason.rules());
            });
        }
    }

    @ParameterizedTest
    @FieldSource("TINY")
    void theChainWalksBackInTime(String name) {
        Workshop workshop = Instances.workshop(name);
        Plan plan = Instances.optimalPlan(name);
        List<Reason> chain = Reason.chain(
                workshop, plan, workshop.steps().get(workshop.steps().size() - 1));
        assertThat(chain).isNotEmpty();
        assertThat(chain.stream().map(Reason::start).toList()).isSortedAccordingTo(java.util.Comparator.reverseOrder());
    }

    private static List<afterlength.planner.check.Rule> brokenAt(
            Workshop workshop, Plan plan, BenchStep step, int minute) {
        List<Placed> placed = new ArrayList<>(plan.placed());
        placed.set(step.id(), new Placed(minute, plan.of(step).person()));
        return PlanCheck.of(workshop, new Plan(placed)).stream()
                .map(BrokenRule::rule)
                .distinct()
                .toList();
    }
}
