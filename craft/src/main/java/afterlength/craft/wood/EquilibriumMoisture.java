package afterlength.craft.wood;

import afterlength.craft.units.MoistureContent;
import afterlength.craft.units.Problem;
import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The moisture content that wood settles at when it stays long enough in air of one temperature and humidity, by the two-hydrate
 * curve of Hailwood and Horrobin ({@link HailwoodHorrobin}). Valid where printed values were read: −1.1 to 60 °C and 5 to 90 %
 * relative humidity; outside there is no number. Left out: the difference between species, the history of the piece
 * (hysteresis), varnish and the time it takes. For the way back see {@link EquilibriumHumidity}.
 */
public sealed interface EquilibriumMoisture {
    /**
     * How far two published curves lie apart at 20 °C between 10 and 90 %, rounded as the source rounds it, in per cent moisture
     * content. Source: docs/sources.md#wood-handbook-2021, equations 4-5 and 4-6.
     */
    double MODEL_UNCERTAINTY_PCT = 0.5;

    /** The printed table begins at 30 °F. Source: docs/sources.md#emc-chart. */
    double LOWEST_C = (30 - 32) / 1.8;

    /**
     * The table that was read ends at 130 °F; one older value at 140 °F lies 0.4 % off the curve, still within its uncertainty.
     * Source: docs/sources.md#emc-older-table.
     */
    double HIGHEST_C = (140 - 32) / 1.8;

    /** The printed table begins at 5 % relative humidity. Source: docs/sources.md#emc-chart. */
    double DRIEST_PCT = 5;

    /** The printed table ends at 90 % relative humidity. Source: docs/sources.md#emc-chart. */
    double DAMPEST_PCT = 90;

    /** The moisture content, plus or minus the uncertainty of the curve in per cent moisture content. */
    record Value(MoistureContent moisture, double uncertainty_pct, List<WoodCaveat> caveats)
            implements EquilibriumMoisture {}

    /** No number: temperature or humidity lies where nothing was read. */
    record OutsideRange(List<Problem> problems) implements EquilibriumMoisture {}

    static EquilibriumMoisture of(Temperature temperature, RelativeHumidity humidity) {
        List<Problem> problems = Stream.of(ReadRange.findProblem(temperature), ReadRange.findProblem(humidity))
                .flatMap(Optional::stream)
                .toList();
        if (!problems.isEmpty()) {
            return new OutsideRange(problems);
        }
        double moisture_pct = HailwoodHorrobin.at_C(temperature.celsius()).moisture_pct(humidity.pct());
        return new Value(MoistureContent.ofPct(moisture_pct), MODEL_UNCERTAINTY_PCT, WoodCaveat.OF_THE_CURVE);
    }
}
