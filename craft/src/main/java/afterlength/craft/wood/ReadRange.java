package afterlength.craft.wood;

import afterlength.craft.units.Problem;
import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import java.util.Locale;
import java.util.Optional;

/**
 * The range in which printed values were read and agree with the curve: 30 to 140 °F and 5 to 90 %. The printed table reaches
 * from 30 to 130 °F (docs/sources.md#emc-chart); one older value at 140 °F lies 0.4 % off the curve, still within its
 * uncertainty (docs/sources.md#emc-older-table).
 */
final class ReadRange {
    static final double LOWEST_C = (30 - 32) / 1.8;
    static final double HIGHEST_C = (140 - 32) / 1.8;
    static final double DRIEST_PCT = 5;
    static final double DAMPEST_PCT = 90;

    private ReadRange() {}

    static Optional<Problem> findProblem(Temperature temperature) {
        double t_C = temperature.celsius();
        if (t_C >= LOWEST_C && t_C <= HIGHEST_C) {
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
                        LOWEST_C,
                        HIGHEST_C)));
    }

    static Optional<Problem> findProblem(RelativeHumidity humidity) {
        double rh_pct = humidity.pct();
        if (rh_pct >= DRIEST_PCT && rh_pct <= DAMPEST_PCT) {
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
                        DRIEST_PCT,
                        DAMPEST_PCT)));
    }
}
