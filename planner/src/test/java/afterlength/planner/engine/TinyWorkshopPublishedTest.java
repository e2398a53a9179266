package afterlength.planner.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import afterlength.planner.Instances;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import afterlength.planner.check.PlanCheck;
import afterlength.planner.check.PlanCost;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** Nine small workshops whose optimum is proven: the engine reaches it, and the checker finds nothing wrong with the plan. */
class TinyWorkshopPublishedTest {
    /** Counted in layings-out, so that the test says the same on every machine; about a fifth of a second each. */
    private static final Effort EFFORT = Effort.ofLayings(20_000);

    /** The published optimum is rounded to four decimals. */
    private static final double ROUNDED = 0.0001;

    static final java.util.List<String> TINY = Instances.TINY;

    @ParameterizedTest
    @FieldSource("TINY")
    void reachesTheProvenOptimum(String name) {
        Workshop workshop = Instances.workshop(name);
        Plan plan = Planner.plan(workshop, EFFORT).orElseThrow();
        assertThat(PlanCheck.of(workshop, plan)).isEmpty();
        assertThat(PlanCost.of(workshop, plan)).isCloseTo(Instances.bestCost(name), within(ROUNDED));
    }

    @ParameterizedTest
    @FieldSource("TINY")
    void thePublishedPlanPassesAndCostsWhatItSays(String name) {
        Workshop workshop = Instances.workshop(name);
        Plan plan = Instances.optimalPlan(name);
        assertThat(PlanCheck.of(workshop, plan)).isEmpty();
        assertThat(PlanCost.of(workshop, plan)).isCloseTo(Instances.bestCost(name), within(ROUNDED));
    }
}
