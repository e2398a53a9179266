package afterlength.craft.air;

import java.util.Arrays;

/** Keeps the readings as bare numbers while a file is read, and puts them in order of time at the end. */
final class RowCollector {
    /** Four million: seven years of readings a minute apart. A power of two, so that a row number fits below a moment. */
    static final int MOST_ROWS = 1 << 22;

    private long[] moment_s = new long[1024];
    private float[] t_C = new float[1024];
    private float[] rh_pct = new float[1024];
    private int[] line = new int[1024];
    private int count;
    private int backwards;

    boolean isFull() {
        return count == MOST_ROWS;
    }

    /** How many rows are earlier than the one before. */
    int backwards() {
        return backwards;
    }

    void add(int atLine, long at_s, double temperature_C, double humidity_pct) {
        if (count == line.length) {
            grow(count * 2);
        }
        if (count > 0 && at_s < moment_s[count - 1]) {
            backwards++;
        }
        moment_s[count] = at_s;
        t_C[count] = (float) temperature_C;
        rh_pct[count] = (float) humidity_pct;
        line[count] = atLine;
        count++;
    }

    private void grow(int size) {
        moment_s = Arrays.copyOf(moment_s, size);
        t_C = Arrays.copyOf(t_C, size);
        rh_pct = Arrays.copyOf(rh_pct, size);
        line = Arrays.copyOf(line, size);
    }

    /** Rows of one time are one reading: the first stays, the others go to the rejected ones. */
    AirRecord finish(RejectedList rejected) {
        if (backwards > 0) {
            sort();
        }
        int kept = 0;
        for (int n = 0; n < count; n++) {
            if (kept > 0 && moment_s[n] == moment_s[kept - 1]) {
                boolean same = t_C[n] == t_C[kept - 1] && rh_pct[n] == rh_pct[kept - 1];
                rejected.add(line[n], same ? RowFault.SAME_AGAIN : RowFault.OTHER_VALUES_AT_THE_SAME_TIME, "");
            } else {
                moment_s[kept] = moment_s[n];
                t_C[kept] = t_C[n];
                rh_pct[kept] = rh_pct[n];
                line[kept] = line[n];
                kept++;
            }
        }
        return AirRecord.ofFirst(kept, moment_s, t_C, rh_pct);
    }

    /** Sorts moments and row numbers together as one number, then fetches the rest. */
    private void sort() {
        long[] keys = new long[count];
        for (int n = 0; n < count; n++) {
            keys[n] = moment_s[n] * MOST_ROWS + n;
        }
        Arrays.sort(keys);
        long[] sorted_s = new long[count];
        float[] sorted_C = new float[count];
        float[] sorted_pct = new float[count];
        int[] sortedLine = new int[count];
        for (int n = 0; n < count; n++) {
            int from = (int) Math.floorMod(keys[n], (long) MOST_ROWS);
            sorted_s[n] = moment_s[from];
            sorted_C[n] = t_C[from];
            sorted_pct[n] = rh_pct[from];
            sortedLine[n] = line[from];
        }
        moment_s = sorted_s;
        t_C = sorted_C;
        rh_pct = sorted_pct;
        line = sortedLine;
    }
}
