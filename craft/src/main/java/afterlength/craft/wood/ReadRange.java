package afterlength.craft.wood;

import afterlength.craft.units.Problem;
import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import java.util.Locale;
import java.util.Optional;

/** Judges whether air lies in the range of {@link EquilibriumMoisture}, and says so in words when it does not. */
final class ReadRange {
    private ReadRange() {}

    static Optional<Problem> findProblem(Temperature temperature) {
        double t_C = temperature.celsius();
        if (t_C >= EquilibriumMoisture.LOWEST_C && t_C <= EquilibriumMoisture.HIGHEST_C) {
            return Optional.empty();
        }
        return Optional.of(new Problem(
                "/temperature_C",
                t_C,
                String.format(
                        Locale.ROOT,
                        "The temperature is %s °C; the curve of wood moisture was checked from %.1f to %.0f °C only. "
                                + "Give a temperature in that range.",
                        t_C,
                        EquilibriumMoisture.LOWEST_C,
                        EquilibriumMoisture.HIGHEST_C)));
    }

    static Optional<Problem> findProblem(RelativeHumidity humidity) {
        double rh_pct = humidity.pct();
        if (rh_pct >= EquilibriumMoisture.DRIEST_PCT && rh_pct <= EquilibriumMoisture.DAMPEST_PCT) {
            return Optional.empty();
        }
        return Optional.of(new Problem(
                "/relative_humidity_pct",
                rh_pct,
                String.format(
                        Locale.ROOT,
                        "The relative humidity is %s %%; the curve of wood moisture was checked from %.0f to %.0f %% only. "
                                + "Give a relative humidity in that range.",
                        rh_pct,
                        EquilibriumMoisture.DRIEST_PCT,
                        EquilibriumMoisture.DAMPEST_PCT)));
    }
}
