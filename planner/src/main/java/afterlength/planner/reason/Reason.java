package afterlength.planner.reason;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import afterlength.planner.check.Rule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Why a step begins no earlier: the fewest rules that, left aside, would let it begin sooner while everything else stays where it
 * is, and how much sooner at most. With everything else free to move more may be possible; that is a question for a what-if.
 *
 * @param rules what holds it; empty when nothing does and the plan has it later for the sake of the whole
 * @param withoutThem the earliest minute at which only these rules are broken
 * @param holders the steps that stand there, without double
 */
public record Reason(int step, int start, Set<Rule> rules, int withoutThem, List<Integer> holders) {
    /** Times are looked at this far apart; a plan moves on a grid of five minutes. */
    private static final int APART = 5;

    /** How far back an earlier start is looked for. */
    private static final int FURTHEST = 28 * 24 * 60;

    public Reason {
        rules = Set.copyOf(rules);
        holders = List.copyOf(holders);
    }

    /** Empty for a step that begins now or has begun. */
    public static Optional<Reason> find(Workshop workshop, Plan plan, BenchStep step) {
        Obstacles obstacles = new Obstacles(workshop, plan, step);
        int start = plan.of(step).start();
        int from = Math.max(workshop.now(), start - FURTHEST);
        Map<Rule, Integer> fewest = Map.of();
        int at = start;
        for (int minute = from; minute < start; minute += APART) {
            Map<Rule, Integer> there = obstacles.at(minute);
            if (at == start || there.size() < fewest.size()) {
                fewest = there;
                at = minute;
            }
        }
        return at == start
                ? Optional.empty()
                : Optional.of(new Reason(step.id(), start, fewest.keySet(), at, holders(fewest)));
    }

    private static List<Integer> holders(Map<Rule, Integer> rules) {
        return rules.values().stream().filter(holder -> holder >= 0).distinct().toList();
    }

    public int minutesLost() {
        return start - withoutThem;
    }

    /** Walks back from a step to what held it, to what held that, until nothing did. */
    public static List<Reason> chain(Workshop workshop, Plan plan, BenchStep last) {
        List<Reason> chain = new ArrayList<>();
        Optional<BenchStep> step = Optional.of(last);
        while (step.isPresent() && chain.size() < workshop.steps().size()) {
            Optional<Reason> reason = find(workshop, plan, step.get());
            reason.ifPresent(chain::add);
            int start = plan.of(step.get()).start();
            step = reason.flatMap(found -> found.holders().stream()
                    .map(workshop.steps()::get)
                    .filter(holder -> plan.of(holder).start() < start)
                    .findFirst());
        }
        return chain;
    }
}
