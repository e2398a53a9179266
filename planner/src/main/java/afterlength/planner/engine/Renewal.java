package afterlength.planner.engine;

import java.util.SplittableRandom;

/**
 * A child of one plan: what happens within a stretch of time is ordered by lot, the rest stays as it was. Where all plans of a
 * population have grown alike, crossing them gives nothing new; this does. Not for two threads at once.
 */
final class Renewal {
    /** The stretch takes from one fifth to a little over one half of the project. Found by trial on the open benchmarks. */
    private static final int SHORTEST_PART = 5;

    private static final int FURTHER_PART = 3;

    private final Network network;
    private final SplittableRandom random;

    Renewal(Network network, SplittableRandom random) {
        this.network = network;
        this.random = random;
    }

    Candidate child(Candidate parent) {
        int end = (int) Math.min(Crossing.FAR / 4, parent.cost);
        int length = end / SHORTEST_PART + random.nextInt(end / FURTHER_PART + 1);
        int from = random.nextInt(end + 1) - length / 2;
        Candidate child = new Candidate(network);
        for (int i = 0; i < network.size; i++) {
            child.key[i] = key(parent.start[i], from, length);
        }
        return child;
    }

    private int key(int own, int from, int length) {
        if (own < from) {
            return own - Crossing.FAR;
        }
        return own > from + length ? own + Crossing.FAR : from + random.nextInt(length + 1);
    }
}
