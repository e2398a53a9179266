package afterlength.planner.engine;

/**
 * Lays a candidate out in time: one activity after another in the order of the keys, each at the earliest minute that its
 * predecessors, its resources, its person's hours and a hot pot allow (serial schedule generation, docs/sources.md#kolisch-1996).
 * Where a longest distance cannot be met, the activity it is counted from is held back and all after it is laid out again
 * (docs/sources.md#franck-2001). Not for two threads at once.
 */
final class Decoder {
    private final Network network;
    private final Order order;
    private final Lane[] lanes;
    private final Stock stock;
    private final GlueDays glue;
    private final boolean[] placed;
    private final int[] low;
    private final Bill bill;
    private final int mostRepairs;
    private int[] start = {};
    private int[] person = {};
    private boolean[] cold = {};

    Decoder(Network network) {
        this.network = network;
        this.order = new Order(network);
        this.lanes = new Lane[network.hoursFrom.length];
        for (int p = 0; p < lanes.length; p++) {
            lanes[p] = new Lane(network.hoursFrom[p], network.hoursTo[p]);
        }
        this.stock = Stock.of(network);
        this.glue = new GlueDays(network);
        this.placed = new boolean[network.size];
        this.low = new int[network.size];
        this.bill = new Bill(network);
        this.mostRepairs = 20 + network.size;
    }

    /** Fills in start and cost; false when it cannot be laid out. */
    boolean decode(Candidate candidate) {
        start = candidate.start;
        person = candidate.person;
        cold = candidate.cold;
        System.arraycopy(candidate.notBefore, 0, low, 0, low.length);
        clear();
        boolean done = lay(order.arrange(candidate.key), candidate);
        candidate.cost = done ? bill.of(candidate.start) : Long.MAX_VALUE;
        return done;
    }

    private void clear() {
        for (Lane lane : lanes) {
            lane.clear();
        }
        stock.clear();
        for (int i = 0; i < network.size; i++) {
            placed[i] = network.begun[i] >= 0;
            if (placed[i]) {
                standWhereBegun(i);
            }
        }
    }

    private void standWhereBegun(int i) {
        start[i] = network.begun[i];
        person[i] = network.begunBy[i];
        if (network.persons[i] != 0) {
            lanes[person[i]].takeWhatIsFree(start[i], network.hands[i]);
        }
        stock.take(i, start[i]);
    }

    private boolean lay(int[] sequence, Candidate candidate) {
        int repairs = 0;
        for (int at = 0; at < sequence.length; at++) {
            int activity = sequence[at];
            if (placed[activity]) {
                continue;
            }
            int when = earliest(activity);
            if (when == Lane.NEVER) {
                return false;
            }
            if (when <= latest(activity)) {
                put(activity, when);
                continue;
            }
            int back = holdBack(activity, when, sequence, candidate);
            if (back < 0 || ++repairs > mostRepairs) {
                return false;
            }
            for (int undo = at - 1; undo >= back; undo--) {
                takeBack(sequence[undo]);
            }
            at = back - 1;
        }
        return true;
    }

    private int earliest(int activity) {
        int least = Math.max(network.earliest[activity], low[activity]);
        int[] into = network.into[activity];
        int[] lag = network.intoLag[activity];
        for (int k = 0; k < into.length; k++) {
            if (placed[into[k]]) {
                least = Math.max(least, start[into[k]] + lag[k]);
            }
        }
        if (network.persons[activity] == 0 && !network.hot[activity]) {
            return stock.earliest(activity, least);
        }
        if (network.persons[activity] == 0) {
            return free(activity, least, null);
        }
        int same = network.sameAs[activity];
        if (same >= 0) {
            person[activity] = person[same];
        }
        return person[activity] == Candidate.WHOEVER
                ? whoeverIsFirst(activity, least)
                : free(activity, least, lanes[person[activity]]);
    }

    private int whoeverIsFirst(int activity, int least) {
        int first = Lane.NEVER;
        for (int set = network.persons[activity]; set != 0; set &= set - 1) {
            int who = Integer.numberOfTrailingZeros(set);
            int when = free(activity, least, lanes[who]);
            if (when < first || person[activity] == Candidate.WHOEVER) {
                first = when;
                person[activity] = who;
            }
        }
        return first;
    }

    /** The earliest minute at which everything it needs is free at once. */
    private int free(int activity, int least, @org.jspecify.annotations.Nullable Lane lane) {
        int when = least;
        int before;
        do {
            before = when;
            if (lane != null) {
                when = lane.earliest(when, network.hands[activity]);
            }
            if (network.hot[activity] && when != Lane.NEVER) {
                when = glue.earliest(when, network.hands[activity], cold);
            }
            if (when != Lane.NEVER) {
                when = stock.earliest(activity, when);
            }
        } while (when != before && when != Lane.NEVER);
        return when;
    }

    /** The latest start that what is placed already allows; what was begun is not held against it. */
    private int latest(int activity) {
        int most = network.deadline[activity];
        int[] out = network.out[activity];
        for (int k = 0; k < out.length; k++) {
            if (placed[out[k]] && network.begun[out[k]] < 0) {
                most = Math.min(most, start[out[k]] - network.outLag[activity][k]);
            }
        }
        return most;
    }

    /** Holds back whatever bounds this activity from above, and returns the place in the sequence to begin again from. */
    private int holdBack(int activity, int when, int[] sequence, Candidate candidate) {
        int[] out = network.out[activity];
        int held = 0;
        for (int k = 0; k < out.length; k++) {
            int other = out[k];
            int needed = when + network.outLag[activity][k];
            if (placed[other] && network.begun[other] < 0 && start[other] < needed) {
                low[other] = needed;
                candidate.notBefore[other] = needed;
                held++;
            }
        }
        for (int at = 0; at < sequence.length; at++) {
            int other = sequence[at];
            if (held > 0 && placed[other] && network.begun[other] < 0 && start[other] < low[other]) {
                return at;
            }
        }
        return -1;
    }

    private void put(int activity, int when) {
        start[activity] = when;
        placed[activity] = true;
        if (network.persons[activity] != 0) {
            lanes[person[activity]].take(when, network.hands[activity]);
        }
        stock.take(activity, when);
    }

    private void takeBack(int activity) {
        if (network.begun[activity] >= 0) {
            return;
        }
        placed[activity] = false;
        if (network.persons[activity] != 0) {
            lanes[person[activity]].give(start[activity], network.hands[activity]);
        }
        stock.give(activity, start[activity]);
    }
}
