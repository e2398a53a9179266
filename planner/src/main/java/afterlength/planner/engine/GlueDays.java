package afterlength.planner.engine;

/** The half-days on which the pot can be hot. It is cold until warmed up, and work with it ends with the half-day. */
final class GlueDays {
    private final int[] from;
    private final int[] to;
    private final int warmUp;

    GlueDays(Network network) {
        this.from = network.glueFrom;
        this.to = network.glueTo;
        this.warmUp = network.warmUp;
    }

    /** On the first half-day that is not to stay cold; on the first of all when every later one is. */
    int earliest(int least, int length, boolean[] cold) {
        int none = Lane.NEVER;
        for (int day = firstEndingAfter(least); day < from.length; day++) {
            int start = Math.max(least, from[day] + warmUp);
            if (start + length <= to[day]) {
                if (!cold[day]) {
                    return start;
                }
                none = Math.min(none, start);
            }
        }
        return none;
    }

    /** The half-day in which this minute lies, or the next one. */
    int firstEndingAfter(int minute) {
        int low = 0;
        int high = to.length;
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

    int count() {
        return from.length;
    }

    int from(int day) {
        return from[day];
    }
}
