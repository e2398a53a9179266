package afterlength.planner.engine;

import java.util.Arrays;
import java.util.SplittableRandom;

/** A child of two plans: a stretch of time, or a stretch of the order, as the father has it; the rest as the mother has it. */
final class Crossing {
    /** Parts what lies before, in and after the stretch; longer than any project. */
    static final int FAR = 1 << 24;

    private static final int SHAKEN_OF_100 = 4;
    private static final int HELD_OF_100 = 6;
    private static final int LONGEST_HELD = 5;

    private final Network network;
    private final SplittableRandom random;
    private final boolean bounded;
    private final boolean[] taken;
    private final long[] sorted;

    Crossing(Network network, SplittableRandom random) {
        this.network = network;
        this.random = random;
        this.bounded = !Mirror.isPossible(network);
        this.taken = new boolean[network.size];
        this.sorted = new long[network.size];
    }

    Candidate child(Candidate mother, Candidate father) {
        Candidate child = random.nextBoolean() ? byTime(mother, father) : byOrder(byStart(mother), byStart(father));
        if (bounded) {
            holdSome(child, mother);
        }
        return child;
    }

    /** Where a longest distance may have to be met by beginning its first activity later than it could, some begin later. */
    private void holdSome(Candidate child, Candidate mother) {
        for (int i = 0; i < network.size; i++) {
            if (random.nextInt(100) < HELD_OF_100) {
                child.notBefore[i] = mother.start[i] + random.nextInt(LONGEST_HELD);
            }
        }
    }

    private Candidate byTime(Candidate mother, Candidate father) {
        int end = (int) Math.min(FAR / 4, mother.cost);
        int length = end / 4 + random.nextInt(end / 2 + 1);
        int from = random.nextInt(end + 1) - length / 2;
        Candidate child = new Candidate(network);
        for (int i = 0; i < network.size; i++) {
            int own = mother.start[i];
            child.key[i] = own < from ? own - FAR : own > from + length ? own + FAR : father.start[i];
        }
        if (random.nextBoolean()) {
            shake(child, 300 / Math.max(3, network.size), 15);
        }
        return child;
    }

    private Candidate byOrder(int[] mother, int[] father) {
        int size = network.size;
        int from = random.nextInt(size);
        int to = Math.min(size, from + size / 4 + random.nextInt(size / 2 + 2));
        Candidate child = new Candidate(network);
        Arrays.fill(taken, false);
        int next = take(child, mother, 0, from);
        next = take(child, father, next, to);
        take(child, mother, next, size);
        shake(child, SHAKEN_OF_100, 8);
        return child;
    }

    /** Those not taken yet, in this order, until so many are taken. */
    private int take(Candidate child, int[] order, int already, int until) {
        int next = already;
        for (int at = 0; at < order.length && next < until; at++) {
            if (!taken[order[at]]) {
                taken[order[at]] = true;
                child.key[order[at]] = next++;
            }
        }
        return next;
    }

    private void shake(Candidate child, int ofHundred, int by) {
        for (int i = 0; i < network.size; i++) {
            if (random.nextInt(100) < ofHundred) {
                child.key[i] += random.nextInt(-by, by + 1);
            }
        }
    }

    private int[] byStart(Candidate candidate) {
        int size = network.size;
        for (int i = 0; i < size; i++) {
            sorted[i] = ((long) candidate.start[i] * size + network.rank[i]) * size + i;
        }
        Arrays.sort(sorted);
        int[] order = new int[size];
        for (int at = 0; at < size; at++) {
            order[at] = (int) (sorted[at] % size);
        }
        return order;
    }
}
