package afterlength.planner.engine;

import afterlength.planner.Instances;
import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import afterlength.planner.check.PlanCheck;
import afterlength.planner.check.PlanCost;
import java.util.List;
import java.util.Optional;

/**
 * Not a test but the long run whose figures stand in docs/performance.md: every instance with two seconds of two processors. Say
 * {@code wall} to stop by the clock on the wall instead of the processors' time; name a set to run only that.
 */
public final class FullBenchmark {
    private static final double SECONDS = 2;
    private static final int SLIPS = 12;
    private static final int WEEK = 7 * 24 * 60;
    private static final int DAY = 24 * 60;

    private final boolean wall;

    private FullBenchmark(boolean wall) {
        this.wall = wall;
    }

    public static void main(String[] arguments) {
        List<String> asked = List.of(arguments);
        FullBenchmark run = new FullBenchmark(asked.contains("wall"));
        for (String set : List.of("j30", "j60", "j120", "rcpspmax", "tiny", "bench", "slips")) {
            if (asked.stream().allMatch("wall"::equals) || asked.contains(set)) {
                run.set(set);
            }
        }
    }

    private void set(String set) {
        switch (set) {
            case "tiny" -> Instances.TINY.forEach(name -> workshop(name, 1));
            case "bench" -> benches();
            case "slips" -> slips();
            default -> projects(set);
        }
    }

    private Effort effort(double seconds) {
        return wall ? Effort.ofSeconds(seconds) : Effort.ofProcessorSeconds(seconds);
    }

    private void projects(String set) {
        List<Instances.Known> all = Instances.listKnown().stream()
                .filter(known -> known.set().equals(set))
                .toList();
        double sum = 0;
        int atBest = 0;
        double worst = 0;
        for (Instances.Known known : all) {
            ProjectAnswer.Made made = (ProjectAnswer.Made) ProjectPlanner.plan(known.project(), effort(SECONDS));
            double gap = 100.0 * (made.makespan() - known.upper()) / known.upper();
            boolean sound = made.makespan() >= known.lower()
                    && ProjectCheck.of(known.project(), made.starts()).isEmpty();
            say(
                    "%s %s: %d, best known %d, gap %.2f %%%s",
                    set, known.file(), made.makespan(), known.upper(), gap, sound ? "" : " NOT SOUND");
            sum += gap;
            atBest += gap <= 0 ? 1 : 0;
            worst = Math.max(worst, gap);
        }
        say(
                "%s: mean gap %.3f %%, worst %.2f %%, %d of %d at the best known",
                set, sum / all.size(), worst, atBest, all.size());
    }

    private void benches() {
        double ratios = 0;
        double ruled = 0;
        for (String name : Instances.BENCH) {
            ratios += workshop(name, SECONDS);
            Workshop workshop = Instances.workshop(name);
            double byRule = PlanCost.of(workshop, EarliestDateFirst.plan(workshop));
            say("%s: earliest promised date first %.2f", name, byRule);
            ruled += byRule / Instances.bestCost(name);
        }
        say(
                "bench: mean %.4f of best known; earliest date first %.4f",
                ratios / Instances.BENCH.size(), ruled / Instances.BENCH.size());
    }

    private double workshop(String name, double seconds) {
        Workshop workshop = Instances.workshop(name);
        Plan plan = Planner.plan(workshop, effort(seconds)).orElseThrow();
        double cost = PlanCost.of(workshop, plan);
        double ratio = cost / Instances.bestCost(name);
        boolean sound = PlanCheck.of(workshop, plan).isEmpty() && cost >= Instances.lowerBound(name) - 0.01;
        say(
                "%s: %.2f, best known %.2f, ratio %.4f%s",
                name, cost, Instances.bestCost(name), ratio, sound ? "" : " NOT SOUND");
        return ratio;
    }

    private void slips() {
        double changed = 0;
        double again = 0;
        Workshop workshop = Instances.workshop("bench_w40p2s1");
        Plan plan = Planner.plan(workshop, effort(SECONDS)).orElseThrow();
        for (int seed = 1; seed <= SLIPS; seed++) {
            Slip slip = Slip.seeded(workshop, plan, seed);
            long before = System.nanoTime();
            Plan retimed = Planner.retime(slip.workshop(), plan).orElseThrow();
            double millis = (System.nanoTime() - before) / 1e6;
            Plan better = Planner.replan(slip.workshop(), plan, Planner.STABILITY, effort(SECONDS / 2))
                    .orElseThrow();
            boolean sound =
                    PlanCheck.of(slip.workshop(), better, Optional.of(plan)).isEmpty();
            say(
                    "slip %d: re-timed in %.1f ms, %.0f %% of next week's steps change day; planned again %.0f %%, cost %.0f → %.0f%s",
                    seed,
                    millis,
                    moved(slip.workshop(), plan, retimed),
                    moved(slip.workshop(), plan, better),
                    PlanCost.of(slip.workshop(), retimed),
                    PlanCost.of(slip.workshop(), better),
                    sound ? "" : " NOT SOUND");
            changed += moved(slip.workshop(), plan, retimed);
            again += moved(slip.workshop(), plan, better);
        }
        say("slips: mean %.1f %% re-timed, %.1f %% planned again", changed / SLIPS, again / SLIPS);
    }

    /** Percent of the steps the old plan had in the next seven days that begin on another day now. */
    private static double moved(Workshop workshop, Plan old, Plan plan) {
        List<BenchStep> soon = workshop.steps().stream()
                .filter(step ->
                        old.of(step).start() >= workshop.now() && old.of(step).start() < workshop.now() + WEEK)
                .toList();
        long moved = soon.stream()
                .filter(step -> old.of(step).start() / DAY != plan.of(step).start() / DAY)
                .count();
        return 100.0 * moved / Math.max(1, soon.size());
    }

    @SuppressWarnings("SystemOut")
    private static void say(String form, Object... values) {
        System.out.println(String.format(java.util.Locale.ROOT, form, values));
    }
}
