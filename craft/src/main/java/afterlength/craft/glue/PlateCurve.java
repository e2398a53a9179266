package afterlength.craft.glue;

import java.util.OptionalDouble;

/** A film on a plate of limited thickness, solved once and kept as points; between two points the film cools evenly. */
final class PlateCurve implements FilmCurve {
    /** Still air on a plate, convection and radiation together: docs/sources.md#still-air. Half and double make the band. */
    static final double AIR_SIDE_W_M2K = 10;

    private static final int MOST_STEPS = 4000;

    private final double[] time_s;
    private final double[] film_C;
    private final int count;

    /** @param finer how many times as many slices, and how many times as small the steps */
    PlateCurve(Spread spread, double airSide_W_m2K, int finer) {
        Layers layers = Layers.of(
                GlueLiquid.of(spread.glueToWater()),
                spread.film_m(),
                spread.wood(),
                spread.plate().orElseThrow().mm() / 1000,
                PlateCooling.FILM_SLICES * finer,
                PlateCooling.WOOD_SLICES * finer);
        PlateCooling cooling = new PlateCooling(
                layers,
                spread.glue().celsius(),
                spread.part().celsius(),
                spread.room().celsius(),
                airSide_W_m2K,
                PlateCooling.GROWTH / finer);
        time_s = new double[MOST_STEPS * finer];
        film_C = new double[MOST_STEPS * finer];
        count = run(cooling);
    }

    private int run(PlateCooling cooling) {
        int n = 0;
        while (true) {
            time_s[n] = cooling.time_s();
            film_C[n] = cooling.film_C();
            n++;
            if (cooling.time_s() >= WindowSeconds.LONGEST_S || n == time_s.length) {
                return n;
            }
            cooling.advance();
        }
    }

    @Override
    public OptionalDouble findTime_s(double gel_C) {
        for (int n = 0; n < count; n++) {
            if (film_C[n] <= gel_C) {
                return OptionalDouble.of(n == 0 ? 0 : between(n, gel_C));
            }
        }
        return OptionalDouble.empty();
    }

    private double between(int n, double gel_C) {
        double part = (film_C[n - 1] - gel_C) / (film_C[n - 1] - film_C[n]);
        return time_s[n - 1] + part * (time_s[n] - time_s[n - 1]);
    }

    @Override
    public double at_C(double wanted_s) {
        int n = 1;
        while (n < count - 1 && time_s[n] < wanted_s) {
            n++;
        }
        double part = Math.min(1, (wanted_s - time_s[n - 1]) / (time_s[n] - time_s[n - 1]));
        return film_C[n - 1] + part * (film_C[n] - film_C[n - 1]);
    }
}
