package afterlength.planner.engine;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/** How much of an effort is spent, from 0 to 1, as the thread sees it that made this. */
final class Clockwork {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** The clock is looked at once in so many layings-out; a look takes as long as a small laying-out. */
    private static final int SELDOM = 8;

    private final Effort effort;
    private final long startNanos;
    private long laid;
    private double spent;

    Clockwork(Effort effort) {
        this.effort = effort;
        this.startNanos = nanos();
    }

    /** Counts one laying-out. */
    double tick() {
        laid++;
        if (effort.layings() < Long.MAX_VALUE) {
            spent = (double) laid / effort.layings();
        }
        if (laid % SELDOM == 0) {
            spent = Math.max(spent, (nanos() - startNanos) / 1e9 / effort.seconds());
        }
        return spent;
    }

    private long nanos() {
        return effort.processorTime() ? THREADS.getCurrentThreadCpuTime() : System.nanoTime();
    }
}
