package afterlength.craft.colour;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.SplittableRandom;

/** How long a match takes one core, whatever else runs, and how near it comes: run by hand, never as a test. */
final class RecipePace {
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();

    private RecipePace() {}

    public static void main(String[] arguments) throws IOException {
        Spectrum ground = Saunderson.VARNISH.measured(SyntheticPalette.ground());
        var palette = SyntheticPalette.colorants();
        FilmOnGround film = new FilmOnGround(ground, palette, Saunderson.VARNISH);
        SplittableRandom random = new SplittableRandom(1);
        double[] byDay = new double[200];
        double[] byLamp = new double[200];
        double[] millis = new double[200];
        for (int trial = -20; trial < 200; trial++) {
            int[] which = random.ints(3, 0, palette.size()).distinct().toArray();
            double[] amounts = random.doubles(which.length, 0.1, 0.7).toArray();
            double[] seen = new double[SyntheticPalette.WAVELENGTHS.count()];
            film.measure(which, amounts, seen);
            Spectrum target = Spectrum.of(SyntheticPalette.WAVELENGTHS, seen);
            long before = CLOCK.getCurrentThreadCpuTime();
            var found = (RecipeAnswer.Found) RecipeSearch.run(
                    new RecipeQuestion(ground, target, palette, new RecipeLimits(3, 3), Saunderson.VARNISH));
            if (trial >= 0) {
                millis[trial] = (CLOCK.getCurrentThreadCpuTime() - before) / 1e6;
                byDay[trial] = found.recipes().get(0).difference(Light.D65);
                byLamp[trial] = found.recipes().get(0).difference(Light.A);
            }
        }
        Arrays.sort(millis);
        Arrays.sort(byDay);
        Arrays.sort(byLamp);
        System.out.printf(
                "match ms of one core: median %.1f, 95 %% %.1f; dE00 D65 95 %% %.3f max %.3f; A 95 %% %.3f max %.3f%n",
                millis[100], millis[190], byDay[190], byDay[199], byLamp[190], byLamp[199]);
    }
}
