package afterlength.planner.engine;

/**
 * How long to search: until so many layings-out per thread, or so many seconds, whichever comes first. Limited by layings-out alone
 * the search gives the same plan every time, whatever the machine.
 *
 * @param processorTime whether the seconds are those the processor spent on each thread, so that a busy machine does not shorten the
 *     search; a person waits by the other clock
 */
public record Effort(double seconds, long layings, long seed, int threads, boolean processorTime) {
    private static final int THREADS = 2;

    public static Effort ofSeconds(double seconds) {
        return new Effort(seconds, Long.MAX_VALUE, 1, THREADS, false);
    }

    public static Effort ofProcessorSeconds(double seconds) {
        return new Effort(seconds, Long.MAX_VALUE, 1, THREADS, true);
    }

    public static Effort ofLayings(long layings) {
        return new Effort(Double.POSITIVE_INFINITY, layings, 1, THREADS, false);
    }

    public Effort withSeed(long other) {
        return new Effort(seconds, layings, other, threads, processorTime);
    }

    /** A share of this effort, from 0 to 1. */
    Effort share(double share) {
        long some = layings == Long.MAX_VALUE ? layings : Math.max(1, Math.round(layings * share));
        return new Effort(seconds * share, some, seed, threads, processorTime);
    }
}
