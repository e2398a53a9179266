package afterlength.bench;

import afterlength.craft.setup.Bench;
import afterlength.craft.setup.BestRadius;
import afterlength.craft.setup.BowCell;
import afterlength.craft.setup.BowMap;
import afterlength.craft.setup.BowMapAxes;
import afterlength.craft.setup.BowOracle;
import afterlength.craft.setup.BowPlace;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.EvenPlayCrown;
import afterlength.craft.setup.EvenPlayGrid;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/** Bridge, map of the bow and even play of one violin with its body, against the searches of the oracle tests. */
public final class SetupBench {
    private static final BridgeInputs VIOLIN = Bench.violinWithBody();
    private static final double LENGTH_mm = VIOLIN.speakingLength_mm();

    /** 4 strings × 25 stops × 3 distances × 3 forces. */
    private static final BowMapAxes AXES = new BowMapAxes(
            IntStream.rangeClosed(0, 24).boxed().toList(),
            List.of(LENGTH_mm / 32, LENGTH_mm / 16, LENGTH_mm / 8),
            List.of(0.3, 1.0, 1.5));

    private SetupBench() {}

    public static void main(String[] arguments) {
        List<Job> jobs = List.of(
                new Job("bridge", SetupBench::bridge, SetupBench::bridgeSearched, 4000, 400, 0.001),
                new Job("bow map, 900 places", SetupBench::map, SetupBench::mapSearched, 400, 15, 0.01),
                new Job("even play", SetupBench::evenPlay, SetupBench::evenPlaySearched, 100, 3, 0.02));
        double[] first_ms =
                jobs.stream().mapToDouble(job -> Times.once_ms(job.quick())).toArray();
        jobs.forEach(Job::requireSameAnswer);
        requireAllPlaces();
        System.out.println(
                "| job | first call, ms | median, ms | 95 of 100 within, ms | slow way, median, ms | ratio |");
        System.out.println("|---|---|---|---|---|---|");
        IntStream.range(0, jobs.size()).forEach(i -> print(jobs.get(i), first_ms[i]));
        gain();
    }

    private static void print(Job job, double first_ms) {
        Times slow = Times.of(job.slow(), Math.min(5, job.slowCalls() / 3), job.slowCalls());
        Times quick = Times.of(job.quick(), job.calls(), job.calls());
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f | %.4f | %.4f | %.2f | %.0f |%n",
                job.name(),
                first_ms,
                quick.median_ms(),
                quick.slow_ms(),
                slow.median_ms(),
                slow.median_ms() / quick.median_ms());
    }

    private static void requireAllPlaces() {
        int places = ((BowMap) BowMap.of(Bench.shape(VIOLIN), AXES)).cells().size();
        if (places != 900) {
            throw new IllegalStateException("the map has " + places + " places, not 900");
        }
    }

    /** What even play wins over the best plain arc, at the tightest place of the usual map. */
    private static void gain() {
        BowMapAxes usual = BowMapAxes.usual(LENGTH_mm);
        BestRadius arc = BestRadius.find(VIOLIN, usual).orElseThrow();
        System.out.printf(
                Locale.ROOT,
                "%nTightest place of the usual map: even play %.2f°, best radius (%.1f mm) %.2f°, radius as given %.2f°%n",
                tightest_deg(Bench.shape(VIOLIN.withCrown(new EvenPlayCrown(usual))), usual),
                arc.radius_mm(),
                arc.opening_deg(),
                tightest_deg(Bench.shape(VIOLIN), usual));
    }

    private static double bridge() {
        return Bench.shape(VIOLIN).strings().get(1).underside().mm();
    }

    private static double bridgeSearched() {
        return new BowOracle(VIOLIN).bridgeUnderside(1);
    }

    private static double map() {
        return tightest_deg(Bench.shape(VIOLIN), AXES);
    }

    private static double tightest_deg(BridgeShape shape, BowMapAxes axes) {
        BowMap map = (BowMap) BowMap.of(shape, axes);
        return map.findTightest().map(BowCell::opening_deg).orElseThrow();
    }

    private static double mapSearched() {
        BowOracle oracle = new BowOracle(VIOLIN);
        double tightest_deg = Double.POSITIVE_INFINITY;
        for (int semitones : AXES.semitones()) {
            for (double distance_mm : AXES.distances_mm()) {
                for (double force_N : AXES.forces_N()) {
                    for (int string = 0; string < VIOLIN.strings().size(); string++) {
                        BowPlace place = place(string, semitones, distance_mm, force_N);
                        BowOracle.Found found = oracle.find(string, place);
                        tightest_deg = Math.min(tightest_deg, found.bass_deg() - found.treble_deg());
                    }
                }
            }
        }
        return tightest_deg;
    }

    private static BowPlace place(int string, int semitones, double distance_mm, double force_N) {
        double stopped_mm = LENGTH_mm * Math.pow(2, -semitones / 12.0);
        String name = VIOLIN.strings().get(string).name();
        return new BowPlace(distance_mm, force_N, semitones == 0 ? Map.of() : Map.of(name, stopped_mm));
    }

    private static double evenPlay() {
        return tightest_deg(Bench.shape(VIOLIN.withCrown(new EvenPlayCrown(AXES))), AXES);
    }

    private static double evenPlaySearched() {
        return new EvenPlayGrid(VIOLIN, AXES).search_deg();
    }
}
