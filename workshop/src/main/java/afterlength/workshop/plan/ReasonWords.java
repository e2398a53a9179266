package afterlength.workshop.plan;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.check.Rule;
import afterlength.planner.reason.Reason;
import afterlength.workshop.desk.Figures;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** Says in plain words what holds a step where it is. */
final class ReasonWords {
    private final CheckedPlan plan;

    private ReasonWords(CheckedPlan plan) {
        this.plan = plan;
    }

    /** From this step back to what held it, and what held that. */
    static List<String> of(CheckedPlan plan, PlannedLine line) {
        ReasonWords words = new ReasonWords(plan);
        List<String> sentences = new ArrayList<>();
        Reason.chain(plan.bench().workshop(), plan.plan(), plan.benchStep(line)).stream()
                .map(words::sentence)
                .forEach(sentences::add);
        return sentences;
    }

    private String sentence(Reason reason) {
        Instant start = plan.bench().time().at(reason.start());
        String begins = name(reason.step()) + " begins " + PlanWords.moment(start);
        if (reason.rules().isEmpty()) {
            return begins + ". Nothing holds it there; the plan has it later because that is better for the whole.";
        }
        String sooner =
                Figures.duration(Duration.ofMinutes(reason.minutesLost()).toMinutes());
        List<String> because = reason.rules().stream()
                .sorted()
                .map(rule -> words(rule, reason))
                .toList();
        return begins + ". It could begin up to " + sooner + " sooner, but " + String.join(", and ", because) + ".";
    }

    private String words(Rule rule, Reason reason) {
        return switch (rule) {
            case IN_HOURS -> "nobody is at the bench then for as long as it takes";
            case NOT_BEFORE -> "that time is past";
            case HOT_GLUE -> "the pot is not hot then";
            case ONE_THING_AT_A_TIME -> hand(reason) + " is busy" + holders(reason, " with ");
            case ONE_ON_INSTRUMENT -> "the instrument is held" + holders(reason, " by ");
            case ORDER -> "what comes before it has to be done, its wait over" + holders(reason, ": ");
            case CLAMPS -> "all clamps are in use" + holders(reason, ", the last by ");
            case CUPBOARD -> "no place to dry is free" + holders(reason, ", the last is taken by ");
            case RECOAT_WINDOW -> "what follows it would come too late after it";
            case SAME_PERSON -> "the person who began it has to go on";
            case RIGHT_PERSON, BEGUN_STAYS, COMPLETE -> rule.words();
        };
    }

    private String hand(Reason reason) {
        return plan.bench().hands().get(plan.plan().placed().get(reason.step()).person());
    }

    private String holders(Reason reason, String before) {
        return reason.rules().size() == 1 && !reason.holders().isEmpty()
                ? before + name(reason.holders().get(0))
                : "";
    }

    private String name(int step) {
        BenchStep bench = plan.bench().workshop().steps().get(step);
        return "“" + bench.name() + "” on " + plan.bench().visitOf(bench).instrument();
    }
}
