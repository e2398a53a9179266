package afterlength.planner.engine;

import java.util.Arrays;

/**
 * How much of one resource is in use, as steps over calendar time: clamps of one size, places in the cupboard, the instrument
 * itself (one of it). From {@code time[k]} to {@code time[k + 1]} the amount {@code used[k]} is in use.
 */
final class Profile {
    private final int capacity;
    private int[] time = new int[64];
    private int[] used = new int[64];
    private int size;

    Profile(int capacity) {
        this.capacity = capacity;
        clear();
    }

    void clear() {
        size = 1;
        time[0] = Integer.MIN_VALUE;
        used[0] = 0;
    }

    /** The earliest minute from {@code least} on from which this amount stays free for this length. */
    int earliest(int least, int length, int amount) {
        int most = capacity - amount;
        int start = least;
        int at = at(least);
        while (at < size && (time[at] < start + length || time[at] <= least)) {
            if (used[at] > most) {
                if (at + 1 == size) {
                    return Lane.NEVER;
                }
                start = time[at + 1];
            }
            at++;
        }
        return start;
    }

    /** Puts an amount in use between two minutes, or takes it out again when it is negative. */
    void add(int from, int to, int amount) {
        int first = cut(from);
        int last = cut(to);
        for (int at = first; at < last; at++) {
            used[at] += amount;
        }
    }

    /** Index of a step that begins exactly here. */
    private int cut(int minute) {
        int at = at(minute);
        if (time[at] == minute) {
            return at;
        }
        if (size == time.length) {
            time = Arrays.copyOf(time, 2 * size);
            used = Arrays.copyOf(used, 2 * size);
        }
        int next = at + 1;
        System.arraycopy(time, next, time, next + 1, size - next);
        System.arraycopy(used, next, used, next + 1, size - next);
        time[next] = minute;
        used[next] = used[at];
        size++;
        return next;
    }

    /** Index of the step in which this minute lies. */
    private int at(int minute) {
        if (time[size - 1] <= minute) {
            return size - 1;
        }
        int low = 0;
        int high = size - 1;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (time[middle] <= minute) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
