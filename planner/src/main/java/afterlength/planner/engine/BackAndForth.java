package afterlength.planner.engine;

import org.jspecify.annotations.Nullable;

/**
 * Lays a plan out, then backwards by its ends, then forwards again by what came of that: often it has become shorter and it is never
 * longer (docs/sources.md#valls-2005). Where time cannot be turned round it is laid out forwards only.
 */
final class BackAndForth {
    private final Network network;
    private final Decoder forwards;
    private final @Nullable Decoder backwards;
    private final @Nullable Candidate turned;

    BackAndForth(Network network) {
        this.network = network;
        this.forwards = new Decoder(network);
        Network mirror = Mirror.isPossible(network) ? Mirror.of(network) : null;
        this.backwards = mirror == null ? null : new Decoder(mirror);
        this.turned = mirror == null ? null : new Candidate(mirror);
    }

    /** False when it cannot be laid out. */
    boolean improve(Candidate candidate) {
        if (!forwards.decode(candidate)) {
            return false;
        }
        if (backwards != null && turned != null) {
            turn(candidate, backwards, turned);
        }
        System.arraycopy(candidate.start, 0, candidate.key, 0, network.size);
        return true;
    }

    private void turn(Candidate candidate, Decoder backward, Candidate late) {
        for (int i = 0; i < network.size; i++) {
            late.key[i] = -(candidate.start[i] + network.hands[i]);
        }
        backward.decode(late);
        for (int i = 0; i < network.size; i++) {
            candidate.key[i] = -(late.start[i] + network.hands[i]);
        }
        forwards.decode(candidate);
    }
}
