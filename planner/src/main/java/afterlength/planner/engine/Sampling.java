package afterlength.planner.engine;

import java.util.Arrays;
import java.util.SplittableRandom;

/** Orders to begin with: what has the longest way to the end comes first, more or less shaken. */
final class Sampling {
    /** Keys are finer than time so that a shake can part what time does not. */
    private static final int FINE = 16;

    private static final double MOST_SHAKEN = 0.3;
    private static final int MOST_HELD_OF_100 = 60;

    private final Network network;
    private final SplittableRandom random;
    private final boolean bounded;
    private final int[] tail;
    private final int longest;

    Sampling(Network network, SplittableRandom random) {
        this.network = network;
        this.random = random;
        this.bounded = !Mirror.isPossible(network);
        this.tail = Tails.of(network);
        this.longest = Arrays.stream(tail).max().orElse(0);
    }

    Candidate shaken(boolean notAtAll) {
        Candidate candidate = new Candidate(network);
        double shake = notAtAll ? 0 : MOST_SHAKEN * longest * random.nextDouble();
        for (int i = 0; i < network.size; i++) {
            candidate.key[i] = (int) (FINE * (shake * random.nextDouble() - tail[i]));
        }
        if (bounded && random.nextBoolean()) {
            holdSome(candidate);
        }
        return candidate;
    }

    /** Where longest distances have to be met, some begin later than they could. */
    private void holdSome(Candidate candidate) {
        int held = random.nextInt(MOST_HELD_OF_100);
        for (int i = 0; i < network.size; i++) {
            if (random.nextInt(100) < held) {
                candidate.notBefore[i] = network.earliest[i] + random.nextInt(1 + longest / 2);
            }
        }
    }
}
