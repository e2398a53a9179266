package afterlength.start.verbs;

import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import afterlength.craft.wood.EquilibriumMoisture;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.Range;

/** The two keys that describe air, as they were read: NaN where a problem was noted, therefore still plain numbers. */
record Air(double t_C, double rh_pct) {
    private static final String CHECKED = "the range in which the curve of wood moisture was checked";

    static Air read(DocumentReader document) {
        return new Air(
                document.get("temperature_C")
                        .asNumber(Range.between(EquilibriumMoisture.LOWEST_C, EquilibriumMoisture.HIGHEST_C, "°C")
                                .because(CHECKED)),
                document.get("relative_humidity_pct")
                        .asNumber(Range.between(EquilibriumMoisture.DRIEST_PCT, EquilibriumMoisture.DAMPEST_PCT, "%")
                                .because(CHECKED)));
    }

    /** To be asked only when the document has no problems: then the air lies in the range. */
    EquilibriumMoisture.Value equilibrium() {
        EquilibriumMoisture answer = EquilibriumMoisture.of(Temperature.ofCelsius(t_C), RelativeHumidity.ofPct(rh_pct));
        if (answer instanceof EquilibriumMoisture.Value value) {
            return value;
        }
        throw new IllegalStateException("air was read as lying in the range, but got " + answer);
    }
}
