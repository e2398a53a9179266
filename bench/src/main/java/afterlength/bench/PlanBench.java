package afterlength.bench;

import afterlength.planner.Instances;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import afterlength.planner.check.PlanCheck;
import afterlength.planner.check.PlanCost;
import afterlength.planner.engine.CpSatWorkshop;
import afterlength.planner.engine.EarliestDateFirst;
import afterlength.planner.engine.Effort;
import afterlength.planner.engine.Planner;
import com.google.ortools.Loader;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the same time on two threads gives for five workshops: our plan, the constraint solver's, and earliest date first. Two
 * seconds, or as many as are named.
 */
public final class PlanBench {
    private static final String SECONDS = "2";
    private static final int THREADS = 2;

    private final double seconds;

    private PlanBench(double seconds) {
        this.seconds = seconds;
    }

    public static void main(String[] arguments) {
        Loader.loadNativeLibraries();
        new PlanBench(Double.parseDouble(arguments.length > 0 ? arguments[0] : SECONDS)).run();
    }

    private void run() {
        Planner.plan(Instances.workshop(Instances.BENCH.get(0)), Effort.ofSeconds(seconds));
        System.out.println(
                "| workshop | best known | our plan | ratio | constraint solver | ratio | earliest date first | ratio |");
        System.out.println("|---|---|---|---|---|---|---|---|");
        List<double[]> ratios = Instances.BENCH.stream().map(this::compare).toList();
        System.out.printf(
                Locale.ROOT,
                "| mean | | | %.3f | | %s | | %.3f |%n",
                mean(ratios, 0),
                ratios.stream().allMatch(each -> each[1] > 0)
                        ? String.format(Locale.ROOT, "%.3f", mean(ratios, 1))
                        : "not all found",
                mean(ratios, 2));
    }

    private double[] compare(String name) {
        Workshop workshop = Instances.workshop(name);
        double best = Instances.bestCost(name);
        double ours =
                cost(workshop, Planner.plan(workshop, Effort.ofSeconds(seconds)).orElseThrow());
        Optional<Plan> solved = CpSatWorkshop.plan(workshop, seconds, THREADS).map(CpSatWorkshop.Answer::plan);
        double solver = solved.map(plan -> cost(workshop, plan)).orElse(0.0);
        double rule = cost(workshop, EarliestDateFirst.plan(workshop));
        System.out.printf(
                Locale.ROOT,
                "| %s | %.2f | %.2f | %.3f | %s | %.2f | %.3f |%n",
                name,
                best,
                ours,
                ours / best,
                solved.isPresent()
                        ? String.format(Locale.ROOT, "%.2f | %.3f", solver, solver / best)
                        : "no plan found | ",
                rule,
                rule / best);
        return new double[] {ours / best, solver / best, rule / best};
    }

    private static double mean(List<double[]> ratios, int column) {
        return ratios.stream().mapToDouble(each -> each[column]).average().orElseThrow();
    }

    /** Only plans without a broken rule are compared. */
    private static double cost(Workshop workshop, Plan plan) {
        if (!PlanCheck.of(workshop, plan).isEmpty()) {
            throw new IllegalStateException("a plan with broken rules");
        }
        return PlanCost.of(workshop, plan);
    }
}
