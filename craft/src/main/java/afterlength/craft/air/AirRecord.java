package afterlength.craft.air;

import java.util.Arrays;

/** Readings in the order of time, no two of the same second; sixteen bytes each. */
public final class AirRecord {
    private final long[] moment_s;
    private final float[] t_C;
    private final float[] rh_pct;

    private AirRecord(long[] moment_s, float[] t_C, float[] rh_pct) {
        this.moment_s = moment_s;
        this.t_C = t_C;
        this.rh_pct = rh_pct;
    }

    /** Copies the arrays; the moments must rise. */
    public static AirRecord of(long[] moment_s, float[] t_C, float[] rh_pct) {
        for (int n = 1; n < moment_s.length; n++) {
            if (moment_s[n] <= moment_s[n - 1]) {
                throw new IllegalArgumentException("reading " + n + " is not later than the one before");
            }
        }
        return new AirRecord(moment_s.clone(), t_C.clone(), rh_pct.clone());
    }

    static AirRecord ofFirst(int count, long[] moment_s, float[] t_C, float[] rh_pct) {
        return new AirRecord(Arrays.copyOf(moment_s, count), Arrays.copyOf(t_C, count), Arrays.copyOf(rh_pct, count));
    }

    public int size() {
        return moment_s.length;
    }

    /** Seconds since 1970. */
    public long moment_s(int n) {
        return moment_s[n];
    }

    public double temperature_C(int n) {
        return t_C[n];
    }

    public double humidity_pct(int n) {
        return rh_pct[n];
    }

    /** The usual time between two readings: the median, or an hour where there are fewer than two. */
    public long usualInterval_s() {
        if (size() < 2) {
            return 3600;
        }
        long[] between_s = new long[size() - 1];
        for (int n = 0; n + 1 < size(); n++) {
            between_s[n] = moment_s[n + 1] - moment_s[n];
        }
        Arrays.sort(between_s);
        return between_s[between_s.length / 2];
    }
}
