package afterlength.planner.engine;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Something went otherwise than planned: a while into the plan, what dries then is found not dry and waits half as long again. */
record Slip(Workshop workshop, int step) {
    private static final int DAY = 24 * 60;

    static Slip seeded(Workshop workshop, Plan plan, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int now = (2 + random.nextInt(8)) * DAY + 10 * 60;
        List<BenchStep> drying = workshop.steps().stream()
                .filter(step ->
                        plan.of(step).start() < now && now < plan.of(step).start() + step.length())
                .filter(step -> step.waits() > 0)
                .toList();
        int late = drying.isEmpty()
                ? -1
                : drying.get(random.nextInt(drying.size())).id();
        List<BenchStep> steps = new ArrayList<>(workshop.steps());
        if (late >= 0) {
            steps.set(late, longer(steps.get(late)));
        }
        return new Slip(
                new Workshop(
                        now,
                        workshop.horizon(),
                        workshop.personHours(),
                        workshop.glueHalfDays(),
                        workshop.glueWarmUp(),
                        workshop.clampCapacity(),
                        workshop.cupboardCapacity(),
                        workshop.jobs(),
                        steps),
                late);
    }

    private static BenchStep longer(BenchStep step) {
        return new BenchStep(
                step.id(),
                step.job(),
                step.name(),
                step.hands(),
                step.waits() * 3 / 2,
                step.persons(),
                step.samePersonAs(),
                step.holdsInstrument(),
                step.clamp(),
                step.clampQty(),
                step.cupboard(),
                step.hotGlue(),
                step.after(),
                step.maxLagFrom(),
                step.maxLag());
    }
}
