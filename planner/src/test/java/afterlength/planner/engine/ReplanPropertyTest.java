package afterlength.planner.engine;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.planner.Instances;
import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import afterlength.planner.check.PlanCheck;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** After something has slipped: what was begun stays, what comes out is a plan, and the same question has the same answer. */
class ReplanPropertyTest {
    private static final Effort EFFORT = Effort.ofLayings(400);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void begunStepsStayAndThePlanIsSound(long seed) {
        Workshop workshop = Instances.workshop("bench_w20p2s3");
        Plan plan = Planner.plan(workshop, EFFORT).orElseThrow();
        Slip slip = Slip.seeded(workshop, plan, seed);
        Plan retimed = Planner.retime(slip.workshop(), plan).orElseThrow();
        Plan again =
                Planner.replan(slip.workshop(), plan, Planner.STABILITY, EFFORT).orElseThrow();
        assertThat(PlanCheck.of(slip.workshop(), retimed, Optional.of(plan)))
                .as("seed " + seed)
                .isEmpty();
        assertThat(PlanCheck.of(slip.workshop(), again, Optional.of(plan)))
                .as("seed " + seed)
                .isEmpty();
        for (BenchStep step : workshop.steps()) {
            if (plan.of(step).start() < slip.workshop().now()) {
                assertThat(again.of(step)).as("seed " + seed).isEqualTo(plan.of(step));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"bench_w10p1s1", "bench_w20p2s3"})
    void whereNothingHappenedTheOldOrderGivesTheOldPlan(String name) {
        Workshop workshop = Instances.workshop(name);
        Plan plan = Planner.plan(workshop, EFFORT).orElseThrow();
        assertThat(Planner.retime(workshop, plan)).contains(plan);
    }

    @ParameterizedTest
    @ValueSource(strings = {"bench_w10p1s1", "tiny_w3p2s2"})
    void theSameEffortGivesTheSamePlan(String name) {
        Workshop workshop = Instances.workshop(name);
        assertThat(Planner.plan(workshop, EFFORT)).isEqualTo(Planner.plan(workshop, EFFORT));
    }
}
