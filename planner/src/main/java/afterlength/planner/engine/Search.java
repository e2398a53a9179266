package afterlength.planner.engine;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;

/**
 * Chains of annealing side by side, one a thread. In the first round every chain goes its own way; in the second all go on from the
 * best, less hot. With the effort counted in layings-out the outcome depends on the seed alone.
 */
final class Search {
    private static final double FIRST_SHARE = 0.75;

    /** Cost of an hour's lateness at weight 1, in the units of {@link Bill}. */
    private static final double HOUR = 3000;

    private static final double HOT = 1 * HOUR;
    private static final double WARM = 0.2 * HOUR;
    private static final double COLD = 0.02 * HOUR;

    private final Network network;
    private final Effort effort;

    Search(Network network, Effort effort) {
        this.network = network;
        this.effort = effort;
    }

    Candidate improve(Candidate first) {
        try (Teams teams = new Teams(effort.threads())) {
            Candidate half = round(teams, first, 0, effort.share(FIRST_SHARE), HOT);
            return round(teams, half, effort.threads(), effort.share(1 - FIRST_SHARE), WARM);
        }
    }

    private Candidate round(Teams teams, Candidate from, int firstChain, Effort share, double hot) {
        List<Callable<Candidate>> chains = new ArrayList<>();
        for (int thread = 0; thread < effort.threads(); thread++) {
            SplittableRandom random = new SplittableRandom(effort.seed() * 1000 + firstChain + thread);
            chains.add(() -> new Annealing(network, from, random).run(new Clockwork(share), hot, COLD));
        }
        return teams.round(chains).stream()
                .min(Comparator.comparingLong(each -> each.cost))
                .orElse(from);
    }
}
