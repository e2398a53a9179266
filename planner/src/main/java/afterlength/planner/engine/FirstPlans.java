package afterlength.planner.engine;

/**
 * Plans by rule, to begin the search from: each step has a key that says when it would be wanted at the latest, counted back from the promised
 * date or forward from today, by weight or not; the cheapest after laying out wins.
 */
final class FirstPlans {
    private static final int WIDE_WEIGHT = 4;

    private final Network network;
    private final Decoder decoder;
    private final int[] tail;

    private FirstPlans(Network network) {
        this.network = network;
        this.decoder = new Decoder(network);
        this.tail = Tails.of(network);
    }

    /** The best of the rules; its cost is {@link Long#MAX_VALUE} when none could be laid out. */
    static Candidate best(Network network) {
        return new FirstPlans(network).best();
    }

    private Candidate best() {
        Candidate best = new Candidate(network);
        for (int rule = 0; rule < 5; rule++) {
            Candidate candidate = new Candidate(network);
            for (int i = 0; i < network.size; i++) {
                candidate.key[i] = key(rule, i);
            }
            if (decoder.decode(candidate) && candidate.cost < best.cost) {
                best = candidate;
            }
        }
        return best;
    }

    private int key(int rule, int i) {
        long due = Math.min(network.due[network.job[i]], Integer.MAX_VALUE / 4);
        long weight = Math.max(1, network.weight[network.job[i]] / 50);
        long left = due - network.now;
        return switch (rule) {
            case 0 -> (int) due - tail[i];
            case 1 -> (int) due;
            case 2 -> (int) (network.now + left / weight - tail[i]);
            case 3 -> (int) (network.now + left / (weight + WIDE_WEIGHT) - tail[i]);
            default -> network.kept[i] >= 0 ? network.kept[i] : (int) due - 2 * tail[i];
        };
    }
}
