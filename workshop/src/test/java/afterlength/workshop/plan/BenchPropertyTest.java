package afterlength.workshop.plan;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.planner.engine.Effort;
import afterlength.workshop.work.StepStatus;
import afterlength.workshop.work.VisitWork;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** For shops as chance has them: what is planned passes the checker, and what has begun stays where the diary says. */
class BenchPropertyTest {
    private static final int SHOPS = 250;
    private static final Effort LITTLE = Effort.ofLayings(40);

    @Test
    void everyPlanOfEveryShopPassesTheChecker() {
        for (long seed = 1; seed <= SHOPS; seed++) {
            ShopWork shop = RandomShop.of(seed);
            Bench bench = BenchBuilder.of(shop);
            assertPlanned(seed, BenchPlans.retimed(bench, KeptPlan.NONE));
            assertPlanned(seed, BenchPlans.better(bench, KeptPlan.NONE, LITTLE));
        }
    }

    @Test
    void aPlanGoesOnThroughAnotherShop() {
        for (long seed = 1; seed <= SHOPS; seed++) {
            ShopWork shop = RandomShop.of(seed);
            CheckedPlan first = assertPlanned(seed, BenchPlans.better(BenchBuilder.of(shop), KeptPlan.NONE, LITTLE));
            KeptPlan kept = kept(first);
            ShopWork later = later(shop, seed);
            Bench bench = BenchBuilder.of(later);
            assertPlanned(seed, BenchPlans.retimed(bench, kept));
            assertPlanned(seed, BenchPlans.better(bench, kept, LITTLE));
        }
    }

    @Test
    void whatHasBegunStandsWhereTheDiarySays() {
        int begun = 0;
        for (long seed = 1; seed <= SHOPS; seed++) {
            ShopWork shop = RandomShop.of(seed);
            CheckedPlan plan = assertPlanned(seed, BenchPlans.better(BenchBuilder.of(shop), KeptPlan.NONE, LITTLE));
            for (PlannedLine line : plan.lines()) {
                if (line.piece().begun()) {
                    begun++;
                    Instant told = told(shop, line);
                    assertThat(Duration.between(line.place().start(), told))
                            .as("shop %d, step %d", seed, line.piece().step().id())
                            .isBetween(Duration.ZERO, Duration.ofSeconds(59));
                }
            }
        }
        assertThat(begun).isGreaterThan(SHOPS / 2);
    }

    @Test
    void handsComeInTheOrderOfTheWorkPage() {
        for (long seed = 1; seed <= SHOPS; seed++) {
            CheckedPlan plan =
                    assertPlanned(seed, BenchPlans.better(BenchBuilder.of(RandomShop.of(seed)), KeptPlan.NONE, LITTLE));
            for (PlannedLine one : plan.lines()) {
                for (PlannedLine other : plan.lines()) {
                    boolean follows = one.visit().equals(other.visit())
                            && !one.piece().begun()
                            && !other.piece().begun()
                            && one.place().hasHands()
                            && other.place().hasHands()
                            && one.piece().step().position()
                                    < other.piece().step().position();
                    assertThat(!follows
                                    || !other.place()
                                            .start()
                                            .isBefore(one.place().handsEnd()))
                            .as("shop %d: %s before %s", seed, one, other)
                            .isTrue();
                }
            }
        }
    }

    @Test
    void nothingIsLostInTheCutting() {
        for (long seed = 1; seed <= SHOPS; seed++) {
            ShopWork shop = RandomShop.of(seed);
            CheckedPlan plan = assertPlanned(seed, BenchPlans.retimed(BenchBuilder.of(shop), KeptPlan.NONE));
            shop.steps().forEach(step -> {
                List<PlannedLine> pieces = plan.lines().stream()
                        .filter(line -> line.piece().step().id() == step.id()
                                && !line.piece().begun())
                        .toList();
                boolean whole = plan.lines().stream()
                        .noneMatch(line -> line.piece().step().id() == step.id()
                                && line.piece().begun());
                long hands = pieces.stream()
                        .mapToLong(line -> Duration.between(
                                        line.place().start(), line.place().handsEnd())
                                .toMinutes())
                        .sum();
                if (whole && !pieces.isEmpty()) {
                    assertThat(hands)
                            .isBetween((long) step.handsTypicalMin(), Math.max(5L, step.handsTypicalMin() + 4L));
                }
            });
        }
    }

    private static Instant told(ShopWork shop, PlannedLine line) {
        StepStatus status = VisitWork.of(List.of(line.piece().step()), shop.diary(), shop.now())
                .steps()
                .get(0)
                .status();
        return status instanceof StepStatus.Begun at ? at.since() : ((StepStatus.Waiting) status).doneAt();
    }

    private static ShopWork later(ShopWork shop, long seed) {
        Instant now = shop.now().plus(Duration.ofHours(new SplittableRandom(seed).nextInt(60)));
        return new ShopWork(
                now,
                shop.settings(),
                shop.rules(),
                shop.absences(),
                shop.urgency(),
                shop.house(),
                shop.steps(),
                shop.diary());
    }

    private static KeptPlan kept(CheckedPlan plan) {
        return new KeptPlan(1, "", "", Instant.EPOCH, plan.bench().placed(plan.plan()), List.of());
    }

    private static CheckedPlan assertPlanned(long seed, PlanAnswer answer) {
        if (answer instanceof PlanAnswer.Broken broken) {
            throw new AssertionError("shop " + seed + ": " + broken.words() + " " + broken.rules());
        }
        assertThat(answer).as("shop %d", seed).isInstanceOf(PlanAnswer.Planned.class);
        return ((PlanAnswer.Planned) answer).plan();
    }
}
