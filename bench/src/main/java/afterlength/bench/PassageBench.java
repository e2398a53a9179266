package afterlength.bench;

import afterlength.craft.access.Holes;
import afterlength.craft.geometry.Outline;
import java.util.List;
import java.util.Locale;

/**
 * What passes a hole of 400 corners: one bar before the hole, with place, spare, lean and the whole frontier of thirteen widths,
 * against squares of paper at every turn, which answer for a single width.
 */
public final class PassageBench {
    private static final int POINTS = 400;
    private static final int CALLS = 60;
    /** Both ways are good to so much, and the paper's squares count from below. */
    private static final double CLOSE_MM = 0.1;

    private PassageBench() {}

    public static void main(String[] arguments) {
        List<Job> jobs = List.of(
                job("sound-hole as traced, bar 12 mm wide", Holes.traced(POINTS), 12),
                job("round hole of 9 mm, 6 mm", Holes.round(POINTS), 6),
                job("ring of waves, 3 mm", Holes.wavy(POINTS), 3));
        System.out.println(
                "| passage, 400 corners | first call, ms | median, ms | 95 of 100 within, ms | slow way for one width, ms | ratio |");
        System.out.println("|---|---|---|---|---|---|");
        jobs.forEach(PassageBench::print);
    }

    private static Job job(String name, Outline hole, double width_mm) {
        return new Job(
                name,
                () -> Holes.thickest_mm(hole, width_mm),
                () -> Holes.thickestOnPaper_mm(hole, width_mm),
                CALLS,
                1,
                CLOSE_MM);
    }

    private static void print(Job job) {
        double first_ms = Times.once_ms(job.quick());
        job.requireSameAnswer();
        Times slow = Times.of(job.slow(), 0, job.slowCalls());
        Times quick = Times.of(job.quick(), job.calls() / 2, job.calls());
        System.out.printf(
                Locale.ROOT,
                "| %s | %.0f | %.1f | %.1f | %.0f | %.0f |%n",
                job.name(),
                first_ms,
                quick.median_ms(),
                quick.slow_ms(),
                slow.median_ms(),
                slow.median_ms() / quick.median_ms());
    }
}
