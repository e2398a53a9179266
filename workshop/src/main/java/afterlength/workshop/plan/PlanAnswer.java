package afterlength.workshop.plan;

import afterlength.planner.check.BrokenRule;
import java.util.List;

/** What came of planning. Only a plan that the checker finds no fault in is ever shown. */
sealed interface PlanAnswer {
    record Planned(CheckedPlan plan) implements PlanAnswer {}

    /** The hours ahead do not hold the work. */
    record NoRoom() implements PlanAnswer {}

    /** The checker found these; the plan is not shown. */
    record Broken(Bench bench, List<BrokenRule> rules) implements PlanAnswer {
        String words() {
            return rules.get(0)
                    .words(step -> "“" + bench.pieces().get(step).step().name() + "”");
        }
    }
}
