package afterlength.start;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ConcurrentSkipListMap;

/** What came of the cases that were sent; several hands write here at once. */
final class FuzzTally {
    private final Queue<String> faults = new ConcurrentLinkedQueue<>();
    private final Map<String, OfKind> kinds = new ConcurrentSkipListMap<>();

    /** @param refused how many were answered with a problem beside a field, or by a page that says why not */
    record OfKind(int cases, int taken, int refused, long total_ns, long longest_ns) {
        OfKind plus(OfKind other) {
            return new OfKind(
                    cases + other.cases,
                    taken + other.taken,
                    refused + other.refused,
                    total_ns + other.total_ns,
                    Math.max(longest_ns, other.longest_ns));
        }
    }

    void fault(String words) {
        faults.add(words);
    }

    void answered(String kind, int status, long took_ns) {
        kinds.merge(kind, new OfKind(1, status < 400 ? 1 : 0, status >= 400 ? 1 : 0, took_ns, took_ns), OfKind::plus);
    }

    List<String> faults() {
        return List.copyOf(faults);
    }

    Map<String, OfKind> kinds() {
        return kinds;
    }

    int cases() {
        return kinds.values().stream().mapToInt(OfKind::cases).sum();
    }

    void print(double seconds) {
        kinds.forEach((kind, of) -> System.out.printf(
                Locale.ROOT,
                "%6d cases, %6d taken, %6d refused, mean %.2f ms, longest %.0f ms  %s%n",
                of.cases(),
                of.taken(),
                of.refused(),
                of.total_ns() / 1e6 / of.cases(),
                of.longest_ns() / 1e6,
                kind));
        faults.stream().limit(60).forEach(System.out::println);
        System.out.printf(
                Locale.ROOT,
                "%d kinds of form, %d cases in %.0f s, %d faults%n",
                kinds.size(),
                cases(),
                seconds,
                faults.size());
    }
}
