package afterlength.workshop.examination;

import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import afterlength.craft.wood.EquilibriumMoisture;
import afterlength.workshop.desk.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The air of the room while something was measured, as far as it was read. */
public record Air(@Nullable Double temperature_C, @Nullable Double humidity_pct) {
    /** Said wherever a moisture stands that was reckoned from the air. */
    static final String CAVEAT =
            "Wood moisture is reckoned from the air, not measured: where the wood settles in time, by a curve "
                    + "for plain wood, good to about ±" + EquilibriumMoisture.MODEL_UNCERTAINTY_PCT
                    + " %. Wood that has just come from other air, or lies under varnish, is not there yet.";

    public static final Air UNKNOWN = new Air(null, null);

    public boolean known() {
        return temperature_C != null || humidity_pct != null;
    }

    /** "20.5 °C, 45 % RH", or nothing. */
    public String words() {
        List<String> parts = new ArrayList<>();
        if (temperature_C != null) {
            parts.add(Figures.plain(temperature_C) + "\u00a0°C");
        }
        if (humidity_pct != null) {
            parts.add(Figures.plain(humidity_pct) + "\u00a0%\u00a0RH");
        }
        return String.join(", ", parts);
    }

    /** The moisture that wood settles at in this air; nothing when the air is not known or outside the curve's range. */
    public Optional<EquilibriumMoisture.Value> findMoisture() {
        return answer().filter(EquilibriumMoisture.Value.class::isInstance).map(EquilibriumMoisture.Value.class::cast);
    }

    /** "8.5 ± 0.5 %", or nothing. */
    String moistureWords() {
        return findMoisture()
                .map(value -> Figures.plusMinus(value.moisture().pct(), value.uncertainty_pct(), "%"))
                .orElse("");
    }

    /** For the line beside the fields: the moisture, what is missing for it, or why there is none. */
    String moistureSentence() {
        return answer().map(Air::sentence)
                .orElse("With temperature and humidity, the moisture that wood settles at stands here.");
    }

    private Optional<EquilibriumMoisture> answer() {
        return temperature_C == null || humidity_pct == null
                ? Optional.empty()
                : Optional.of(EquilibriumMoisture.of(
                        Temperature.ofCelsius(temperature_C), RelativeHumidity.ofPct(humidity_pct)));
    }

    private static String sentence(EquilibriumMoisture answer) {
        if (answer instanceof EquilibriumMoisture.Value value) {
            return "Wood settles at " + Figures.plusMinus(value.moisture().pct(), value.uncertainty_pct(), "%")
                    + " moisture in this air.";
        }
        return String.join(
                " ",
                ((EquilibriumMoisture.OutsideRange) answer)
                        .problems().stream().map(problem -> problem.message()).toList());
    }
}
