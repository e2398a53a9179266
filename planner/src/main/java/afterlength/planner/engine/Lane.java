package afterlength.planner.engine;

import java.util.Arrays;

/**
 * The free time of one person: stretches inside working hours, in order, none touching the next. Work is taken out of one stretch
 * and never goes over its end; whoever wants to go home in between cuts the work into pieces first.
 */
final class Lane {
    /** Said of work for which there is no room before the calendar ends. */
    static final int NEVER = Integer.MAX_VALUE;

    private final int[] hoursFrom;
    private final int[] hoursTo;
    private int[] from;
    private int[] to;
    private int size;

    Lane(int[] hoursFrom, int[] hoursTo) {
        this.hoursFrom = hoursFrom.clone();
        this.hoursTo = hoursTo.clone();
        this.from = new int[hoursFrom.length + 64];
        this.to = new int[hoursFrom.length + 64];
        clear();
    }

    void clear() {
        size = hoursFrom.length;
        System.arraycopy(hoursFrom, 0, from, 0, size);
        System.arraycopy(hoursTo, 0, to, 0, size);
    }

    /** The earliest minute from {@code least} on at which this length is free. */
    int earliest(int least, int length) {
        for (int at = firstEndingAfter(least); at < size; at++) {
            int start = Math.max(least, from[at]);
            if (start + length <= to[at]) {
                return start;
            }
        }
        return NEVER;
    }

    /** Takes a length that is known to be free. */
    void take(int start, int length) {
        int at = firstEndingAfter(start);
        int end = start + length;
        if (from[at] == start && to[at] == end) {
            remove(at);
        } else if (from[at] == start) {
            from[at] = end;
        } else if (to[at] == end) {
            to[at] = start;
        } else {
            insert(at + 1, end, to[at]);
            to[at] = start;
        }
    }

    /** Takes what is still free of this length; what was begun stays where it was, even outside the hours. */
    void takeWhatIsFree(int start, int length) {
        int end = start + length;
        for (int at = firstEndingAfter(start); at < size && from[at] < end; at = firstEndingAfter(start)) {
            int begin = Math.max(start, from[at]);
            take(begin, Math.min(end, to[at]) - begin);
        }
    }

    /** Gives back what was taken. */
    void give(int start, int length) {
        int end = start + length;
        int at = firstEndingAfter(start - 1);
        boolean joinsBefore = at < size && to[at] == start;
        int next = joinsBefore ? at + 1 : at;
        boolean joinsAfter = next < size && from[next] == end;
        if (joinsBefore && joinsAfter) {
            to[at] = to[next];
            remove(next);
        } else if (joinsBefore) {
            to[at] = end;
        } else if (joinsAfter) {
            from[next] = start;
        } else {
            insert(at, start, end);
        }
    }

    /** Index of the first stretch that ends after this minute. */
    private int firstEndingAfter(int minute) {
        int low = 0;
        int high = size;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (to[middle] > minute) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private void insert(int at, int start, int end) {
        if (size == from.length) {
            from = Arrays.copyOf(from, 2 * size);
            to = Arrays.copyOf(to, 2 * size);
        }
        System.arraycopy(from, at, from, at + 1, size - at);
        System.arraycopy(to, at, to, at + 1, size - at);
        from[at] = start;
        to[at] = end;
        size++;
    }

    private void remove(int at) {
        System.arraycopy(from, at + 1, from, at, size - at - 1);
        System.arraycopy(to, at + 1, to, at, size - at - 1);
        size--;
    }
}
