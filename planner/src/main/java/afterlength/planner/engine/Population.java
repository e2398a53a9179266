package afterlength.planner.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Plans by cost, the cheapest first, no two alike. */
final class Population {
    private final List<Candidate> byCost = new ArrayList<>();
    private final int most;
    private final SplittableRandom random;

    Population(int most, SplittableRandom random) {
        this.most = most;
        this.random = random;
    }

    /** The better of two drawn. */
    Candidate parent() {
        return byCost.get(Math.min(random.nextInt(byCost.size()), random.nextInt(byCost.size())));
    }

    /** It takes the place of the worst, unless it is worse still or a twin. */
    void settle(Candidate candidate) {
        if (isFull() && candidate.cost >= byCost.get(most - 1).cost) {
            return;
        }
        int at = byCost.size();
        while (at > 0 && byCost.get(at - 1).cost >= candidate.cost) {
            at--;
            if (byCost.get(at).cost == candidate.cost && Arrays.equals(byCost.get(at).start, candidate.start)) {
                return;
            }
        }
        if (isFull()) {
            byCost.remove(most - 1);
        }
        byCost.add(at, candidate);
    }

    boolean isFull() {
        return byCost.size() == most;
    }

    boolean isEmpty() {
        return byCost.isEmpty();
    }

    Candidate best() {
        return byCost.get(0);
    }

    List<Candidate> all() {
        return List.copyOf(byCost);
    }
}
