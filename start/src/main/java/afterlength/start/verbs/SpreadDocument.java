package afterlength.start.verbs;

import afterlength.craft.glue.PotHeat;
import afterlength.craft.glue.Spread;
import afterlength.craft.units.Length;
import afterlength.craft.units.Temperature;
import afterlength.craft.wood.WoodHeat;
import afterlength.start.document.DocumentReader;
import afterlength.start.document.DocumentValue;
import afterlength.start.document.Range;
import java.util.List;
import java.util.Optional;

/** Reads how glue is spread. */
final class SpreadDocument {
    private static final double USUAL_ROOM_C = 20;

    private SpreadDocument() {}

    /** Empty when something could not be read; the document knows what. */
    static Optional<Spread> read(DocumentReader document) {
        double glue_C = document.get("glue_C")
                .asNumber(
                        Range.between(20, PotHeat.REFUSED_ABOVE_C, "°C").because("above which hide glue breaks down"));
        double wood_C = document.get("wood_C").asNumber(Range.between(-5, 60, "°C"));
        double film_mm = document.get("film_mm").asNumber(Range.between(0.01, 2, "mm"));
        double glueToWater = document.get("glue_to_water").asNumber(Range.between(0.05, 2, ""));
        Optional<WoodHeat> wood = wood(document.get("wood"));
        double gel_C = number(document, "gel_C", Range.between(20, 50, "°C"), Spread.USUAL_GEL_C);
        double room_C = number(document, "room_C", Range.between(-5, 60, "°C"), USUAL_ROOM_C);
        Optional<Double> plate_mm =
                document.find("plate_mm").map(value -> value.asNumber(Range.between(0.5, 100, "mm")));
        boolean closed = document.find("faces")
                .flatMap(value -> value.asOneOf(List.of(false, true), both -> both ? "both" : "one"))
                .orElse(false);
        if (document.hasProblems() || wood.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Spread(
                Temperature.ofCelsius(glue_C),
                Temperature.ofCelsius(wood_C),
                Length.ofMm(film_mm),
                glueToWater,
                wood.get(),
                closed,
                Temperature.ofCelsius(gel_C),
                plate_mm.map(Length::ofMm),
                Temperature.ofCelsius(room_C)));
    }

    private static double number(DocumentReader document, String key, Range range, double usual) {
        return document.find(key).map(value -> value.asNumber(range)).orElse(usual);
    }

    private static Optional<WoodHeat> wood(DocumentValue value) {
        if (!value.isObject()) {
            return value.asOneOf(List.of(true, false), spruce -> spruce ? "spruce" : "maple")
                    .map(spruce -> spruce ? WoodHeat.SPRUCE : WoodHeat.MAPLE);
        }
        DocumentReader wood = value.asObject();
        double conductivity = wood.get("conductivity_W_mK").asNumber(Range.between(0.02, 1, "W/mK"));
        double density = wood.get("density_kg_m3").asNumber(Range.between(100, 1500, "kg/m³"));
        double heat = wood.get("heat_J_kgK").asNumber(Range.between(500, 4000, "J/kgK"));
        boolean read = Double.isFinite(conductivity) && Double.isFinite(density) && Double.isFinite(heat);
        return read ? Optional.of(new WoodHeat(conductivity, density, heat)) : Optional.empty();
    }
}
