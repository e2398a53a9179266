package afterlength.planner.engine;

import java.util.Arrays;

/**
 * Up to four resources side by side in one word for each unit of time, so that one subtraction asks all of them at once. For short
 * projects in which every activity holds what it uses from its start to its end.
 */
final class PackedStock implements Stock {
    private static final int FIELDS = 4;
    private static final int BITS = 16;

    /** The top bit of each field; it stays set as long as a subtraction borrows nothing. */
    private static final long GUARD = 0x8000_8000_8000_8000L;

    private final Network network;
    private final long[] demand;
    private final boolean[] possible;
    private final long full;
    private long[] free = new long[1024];
    private int used;

    PackedStock(Network network) {
        this.network = network;
        this.full = packed(network.capacity);
        this.demand = new long[network.size];
        this.possible = new boolean[network.size];
        for (int i = 0; i < network.size; i++) {
            int[] amounts = new int[network.capacity.length];
            for (int k = 0; k < network.use[i].length; k++) {
                amounts[network.use[i][k]] += network.useAmount[i][k];
            }
            demand[i] = packed(amounts);
            possible[i] = (((full | GUARD) - demand[i]) & GUARD) == GUARD;
        }
        this.used = free.length;
        clear();
    }

    static boolean fits(Network network) {
        if (network.capacity.length > FIELDS || !network.hasNoHours()) {
            return false;
        }
        for (int i = 0; i < network.size; i++) {
            for (int k = 0; k < network.use[i].length; k++) {
                boolean whole = network.useFrom[i][k] == 0 && network.useTo[i][k] == network.hands[i];
                if (!whole || network.useAmount[i][k] >> (BITS - 1) != 0) {
                    return false;
                }
            }
        }
        return Arrays.stream(network.capacity).allMatch(capacity -> capacity >> (BITS - 1) == 0);
    }

    private static long packed(int[] amounts) {
        long packed = 0;
        for (int field = 0; field < amounts.length; field++) {
            packed |= (long) amounts[field] << (field * BITS);
        }
        return packed;
    }

    @Override
    public void clear() {
        Arrays.fill(free, 0, used, full | GUARD);
        used = 0;
    }

    @Override
    public int earliest(int activity, int least) {
        if (!possible[activity]) {
            return Lane.NEVER;
        }
        int length = network.hands[activity];
        long wanted = demand[activity];
        int start = least;
        int known = least;
        int at = least + length - 1;
        while (at >= known) {
            if (at < used && ((free[at] - wanted) & GUARD) != GUARD) {
                known = start + length;
                start = at + 1;
                known = Math.max(known, start);
                at = start + length - 1;
            } else {
                at--;
            }
        }
        return start;
    }

    @Override
    public void take(int activity, int start) {
        int end = start + network.hands[activity];
        if (end > free.length) {
            int before = free.length;
            free = Arrays.copyOf(free, Math.max(end, 2 * before));
            Arrays.fill(free, before, free.length, full | GUARD);
        }
        used = Math.max(used, end);
        for (int at = start; at < end; at++) {
            free[at] -= demand[activity];
        }
    }

    @Override
    public void give(int activity, int start) {
        int end = start + network.hands[activity];
        for (int at = start; at < end; at++) {
            free[at] += demand[activity];
        }
    }
}
