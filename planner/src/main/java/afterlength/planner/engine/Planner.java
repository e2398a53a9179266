package afterlength.planner.engine;

import afterlength.planner.bench.Placed;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans the bench: from nothing, or going on from a plan after something has happened. Empty when the hours given do not hold the work. */
public final class Planner {
    /**
     * Cost of each step that changes its day against the plan before: as much as six hours' lateness at weight 1. Our own choice:
     * people have arranged themselves with a plan.
     */
    public static final double STABILITY = 6;

    private Planner() {}

    public static Optional<Plan> plan(Workshop workshop, Effort effort) {
        Network network = WorkshopNetwork.of(workshop, Optional.empty(), 0);
        return improve(network, FirstPlans.best(network), effort);
    }

    /** The old order, laid out anew at once, without any search. What began before now stays. */
    public static Optional<Plan> retime(Workshop workshop, Plan kept) {
        Network network = WorkshopNetwork.of(workshop, Optional.of(kept), 0);
        return Optional.of(again(network, kept)).filter(Planner::isLaidOut).map(Planner::planOf);
    }

    /** A better plan that changes as little as it is worth. What began before now stays. */
    public static Optional<Plan> replan(Workshop workshop, Plan kept, double stability, Effort effort) {
        Network network = WorkshopNetwork.of(workshop, Optional.of(kept), stability);
        Candidate again = again(network, kept);
        loosen(network, again);
        return improve(network, isLaidOut(again) ? again : FirstPlans.best(network), effort);
    }

    /** Only glue and coats go on being held where they are. */
    private static void loosen(Network network, Candidate candidate) {
        for (int i = 0; i < network.size; i++) {
            boolean coat = java.util.Arrays.stream(network.intoLag[i]).anyMatch(lag -> lag < 0);
            candidate.notBefore[i] = coat || network.hot[i] ? candidate.start[i] : 0;
        }
    }

    /** The old order, nothing sooner than it was; what is new comes last, and may have the pot heated for it. */
    private static Candidate again(Network network, Plan kept) {
        Candidate candidate = new Candidate(network);
        GlueDays glue = new GlueDays(network);
        java.util.Arrays.fill(candidate.cold, !isNewWithGlue(network, kept));
        for (int i = 0; i < network.size; i++) {
            Placed place = kept.placed().get(i);
            candidate.key[i] = place.start();
            if (place.equals(Placed.NOWHERE)) {
                continue;
            }
            candidate.notBefore[i] = candidate.key[i];
            candidate.person[i] = place.person();
            int day = glue.firstEndingAfter(candidate.key[i]);
            if (network.hot[i] && day < glue.count()) {
                candidate.cold[day] = false;
            }
        }
        new Decoder(network).decode(candidate);
        return candidate;
    }

    private static boolean isNewWithGlue(Network network, Plan kept) {
        return java.util.stream.IntStream.range(0, network.size)
                .anyMatch(i -> network.hot[i] && kept.placed().get(i).equals(Placed.NOWHERE));
    }

    private static Optional<Plan> improve(Network network, Candidate first, Effort effort) {
        return isLaidOut(first) ? Optional.of(planOf(new Search(network, effort).improve(first))) : Optional.empty();
    }

    private static boolean isLaidOut(Candidate candidate) {
        return candidate.cost < Long.MAX_VALUE;
    }

    private static Plan planOf(Candidate candidate) {
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < candidate.start.length; i++) {
            placed.add(new Placed(candidate.start[i], candidate.person[i]));
        }
        return new Plan(placed);
    }
}
