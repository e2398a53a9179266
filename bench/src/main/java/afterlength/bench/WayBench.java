package afterlength.bench;

import afterlength.craft.access.Motion;
import afterlength.craft.access.MotionAnswer;
import afterlength.craft.access.Ways;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * How long it takes to find a way through a hole, or to end without one, for the things of the oracle test; and how long somebody waits
 * who stops the search, which is at most the longest stretch between two reports of its progress.
 */
public final class WayBench {
    private static final int WARM_UPS = 3;
    private static final int CALLS = 20;
    private static final double NANOSECONDS_PER_MS = 1e6;

    private WayBench() {}

    public static void main(String[] arguments) {
        System.out.println(
                "| way | answer | first call, ms | median, ms | 95 of 100 within, ms | reports | longest between two, ms |");
        System.out.println("|---|---|---|---|---|---|---|");
        Ways.list().forEach(WayBench::print);
    }

    private static void print(Ways way) {
        double first_ms = Times.once_ms(() -> found(way));
        Times times = Times.of(() -> found(way), WARM_UPS, CALLS);
        List<Long> reported = new ArrayList<>();
        reported.add(System.nanoTime());
        MotionAnswer answer = way.find(share -> reported.add(System.nanoTime()));
        reported.add(System.nanoTime());
        System.out.printf(
                Locale.ROOT,
                "| %s | %s | %.0f | %.0f | %.0f | %d | %.0f |%n",
                way.title(),
                answer instanceof Motion motion ? "way of " + motion.poses().size() + " poses" : "none found",
                first_ms,
                times.median_ms(),
                times.slow_ms(),
                reported.size() - 2,
                longest_ms(reported));
    }

    private static double found(Ways way) {
        return way.find(share -> true) instanceof Motion ? 1 : 0;
    }

    private static double longest_ms(List<Long> reported) {
        List<Long> stretches = new ArrayList<>();
        for (int i = 1; i < reported.size(); i++) {
            stretches.add(reported.get(i) - reported.get(i - 1));
        }
        return Collections.max(stretches) / NANOSECONDS_PER_MS;
    }
}
