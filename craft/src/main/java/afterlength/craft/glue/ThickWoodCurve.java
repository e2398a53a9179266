package afterlength.craft.glue;

import java.util.OptionalDouble;

/** A film on wood without end. */
final class ThickWoodCurve implements FilmCurve {
    private final double part_C;
    private final double excess_C;
    private final double perTau_s;

    ThickWoodCurve(Spread spread) {
        part_C = spread.part().celsius();
        excess_C = spread.glue().celsius() - part_C;
        GlueLiquid glue = GlueLiquid.of(spread.glueToWater());
        double film_J_m2K = glue.density_kg_m3() * glue.heat_J_kgK() * spread.film_m();
        double effusivity = spread.wood().effusivity();
        perTau_s = film_J_m2K * film_J_m2K / (effusivity * effusivity);
    }

    @Override
    public OptionalDouble findTime_s(double gel_C) {
        if (part_C + excess_C <= gel_C) {
            return OptionalDouble.of(0);
        }
        if (part_C >= gel_C) {
            return OptionalDouble.empty();
        }
        double time_s = perTau_s * HalfSpace.tauWhenLeft((gel_C - part_C) / excess_C);
        return time_s > WindowSeconds.LONGEST_S ? OptionalDouble.empty() : OptionalDouble.of(time_s);
    }

    @Override
    public double at_C(double time_s) {
        return part_C + excess_C * HalfSpace.excess(time_s / perTau_s);
    }
}
