package afterlength.workshop.climate;

import afterlength.craft.units.Length;
import afterlength.craft.units.RelativeHumidity;
import afterlength.craft.units.Temperature;
import afterlength.craft.wood.CrackClosing;
import afterlength.craft.wood.Cut;
import afterlength.craft.wood.EquilibriumMoisture;
import afterlength.craft.wood.HeldPlate;
import afterlength.craft.wood.OpenFaces;
import afterlength.craft.wood.PlateResponse;
import afterlength.craft.wood.Share;
import afterlength.craft.wood.WidthChange;
import afterlength.craft.wood.Wood;
import afterlength.workshop.desk.Typed;
import java.util.Map;
import java.util.Optional;

/** Reads the question of the crack: a plate, its gap, and the air before and after. */
final class WoodForm {
    private static final Map<String, String> USUAL = Map.of(
            "temperature_C", "20",
            "from_pct", "38",
            "to_pct", "50",
            "width_mm", "208",
            "thickness_mm", "2.5",
            "gap_mm", "0.3",
            "species", Wood.NORWAY_SPRUCE.name(),
            "cut", Cut.QUARTER.name(),
            "least_pct", "30");

    private WoodForm() {}

    static Typed usual() {
        return Typed.known(USUAL);
    }

    static Optional<WoodAnswer> read(Typed typed) {
        double t_C = typed.requiredDecimal("temperature_C", "The temperature", "°C", -1, 60);
        double from_pct = humidity(typed, "from_pct", "The humidity before");
        double to_pct = humidity(typed, "to_pct", "The humidity after");
        double width_mm = typed.requiredDecimal("width_mm", "The width", "mm", 1, 2000);
        double thickness_mm = typed.requiredDecimal("thickness_mm", "The thickness", "mm", 0.5, 100);
        double gap_mm = typed.requiredDecimal("gap_mm", "The gap", "mm", 0.01, 20);
        double least_pct = typed.requiredDecimal("least_pct", "The least part that reaches the crack", "%", 0, 100);
        Wood wood = typed.choice("species", "The wood", Wood.class);
        Cut cut = typed.choice("cut", "The cut", Cut.class);
        if (!typed.sound() || wood == null || cut == null) {
            return Optional.empty();
        }
        var before = moisture(t_C, from_pct);
        var after = moisture(t_C, to_pct);
        Length width = Length.ofMm(width_mm);
        HeldPlate plate = HeldPlate.of(
                width,
                wood,
                cut,
                before.moisture(),
                after.moisture(),
                new Share(least_pct / 100, 1),
                Share.HALF_TO_WHOLE);
        return Optional.of(new WoodAnswer(
                before.moisture().pct(),
                after.moisture().pct(),
                before.uncertainty_pct(),
                WidthChange.of(width, wood, cut, before.moisture(), after.moisture()),
                CrackClosing.of(Length.ofMm(gap_mm), plate),
                PlateResponse.of(Length.ofMm(thickness_mm), cut, OpenFaces.ONE)));
    }

    private static double humidity(Typed typed, String name, String label) {
        return typed.requiredDecimal(name, label, "%", EquilibriumMoisture.DRIEST_PCT, EquilibriumMoisture.DAMPEST_PCT);
    }

    /** The form let through only what the curve knows. */
    private static EquilibriumMoisture.Value moisture(double t_C, double rh_pct) {
        return (EquilibriumMoisture.Value)
                EquilibriumMoisture.of(Temperature.ofCelsius(t_C), RelativeHumidity.ofPct(rh_pct));
    }
}
