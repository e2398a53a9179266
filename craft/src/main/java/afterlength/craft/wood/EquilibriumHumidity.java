package afterlength.craft.wood;

import afterlength.craft.units.MoistureContent;
import afterlength.craft.units.Problem;
import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The relative humidity at which wood settles at a wanted moisture content: {@link EquilibriumMoisture} run backwards. The curve
 * rises strictly with humidity, so there is one root between 5 and 90 % or none; it is bracketed, never inverted in closed form,
 * because the closed form belongs to another curve. Left out: the same things as there.
 */
public sealed interface EquilibriumHumidity {
    /** Humidity in per cent; far below the ± of the curve, so that going there and back does not show. */
    double ACCURACY_PCT = 1e-9;

    /** The humidity, plus or minus what the uncertainty of the curve is worth there, in per cent relative humidity. */
    record Value(RelativeHumidity humidity, double uncertainty_pct, List<WoodCaveat> caveats)
            implements EquilibriumHumidity {}

    /** No number: no air between 5 and 90 % gives this moisture content, or the temperature lies where nothing was read. */
    record OutsideRange(List<Problem> problems) implements EquilibriumHumidity {}

    static EquilibriumHumidity of(Temperature temperature, MoistureContent wanted) {
        return ReadRange.findProblem(temperature)
                .or(() -> findProblem(temperature, wanted))
                .<EquilibriumHumidity>map(problem -> new OutsideRange(List.of(problem)))
                .orElseGet(() -> solve(HailwoodHorrobin.at_C(temperature.celsius()), wanted.pct()));
    }

    private static Optional<Problem> findProblem(Temperature temperature, MoistureContent wanted) {
        HailwoodHorrobin curve = HailwoodHorrobin.at_C(temperature.celsius());
        double least_pct = curve.moisture_pct(EquilibriumMoisture.DRIEST_PCT);
        double most_pct = curve.moisture_pct(EquilibriumMoisture.DAMPEST_PCT);
        if (wanted.pct() >= least_pct && wanted.pct() <= most_pct) {
            return Optional.empty();
        }
        return Optional.of(new Problem(
                "/moisture_pct",
                wanted.pct(),
                String.format(
                        Locale.ROOT,
                        "The moisture content is %s %%; at %s °C air of 5 to 90 %% gives %.1f to %.1f %%. "
                                + "Give a moisture content in that range.",
                        wanted.pct(),
                        temperature.celsius(),
                        least_pct,
                        most_pct)));
    }

    private static Value solve(HailwoodHorrobin curve, double wanted_pct) {
        double humidity_pct = new BracketingNthOrderBrentSolver(ACCURACY_PCT, 5)
                .solve(
                        100,
                        humidity -> curve.moisture_pct(humidity) - wanted_pct,
                        EquilibriumMoisture.DRIEST_PCT,
                        EquilibriumMoisture.DAMPEST_PCT);
        return new Value(
                RelativeHumidity.ofPct(humidity_pct),
                EquilibriumMoisture.MODEL_UNCERTAINTY_PCT / slope(curve, humidity_pct),
                WoodCaveat.OF_THE_CURVE);
    }

    /** Per cent moisture content for one per cent relative humidity, by a central difference. */
    private static double slope(HailwoodHorrobin curve, double humidity_pct) {
        double step_pct = 0.01;
        return (curve.moisture_pct(humidity_pct + step_pct) - curve.moisture_pct(humidity_pct - step_pct))
                / (2 * step_pct);
    }
}
