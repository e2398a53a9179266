package afterlength.workshop.setup;

import afterlength.craft.setup.CommonRange;
import afterlength.craft.setup.CommonSetup;
import afterlength.craft.setup.SetupQuantity;
import afterlength.workshop.desk.DecimalText;
import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is common in the trade for one field, as a faint band with the typed value on it and in words. A band is a third of its
 * scale; a value beyond the scale stands at its end.
 */
record RangePart(Optional<CommonRange> range, OptionalDouble value) {
    private static final Map<String, SetupQuantity> FIELDS = new LinkedHashMap<>();

    static {
        FIELDS.put("projection_mm", SetupQuantity.PROJECTION);
        FIELDS.put("board_radius_mm", SetupQuantity.BOARD_RADIUS);
        FIELDS.put("board_end_clearance_mm/bass", SetupQuantity.BOARD_END_CLEARANCE_BASS);
        FIELDS.put("board_end_clearance_mm/treble", SetupQuantity.BOARD_END_CLEARANCE_TREBLE);
        FIELDS.put("nut_spacing_mm", SetupQuantity.NUT_SPACING);
        FIELDS.put("bridge_spacing_mm", SetupQuantity.BRIDGE_SPACING);
        FIELDS.put("crown/radius_mm", SetupQuantity.CROWN_RADIUS);
        for (BenchReading reading : BenchReading.values()) {
            reading.findQuantity().ifPresent(quantity -> FIELDS.put(reading.field(), quantity));
        }
    }

    /** One for every field that has a quantity, by the field's name. */
    static Map<String, RangePart> all(Typed typed) {
        OptionalDouble length_mm =
                DecimalText.read(typed.raw("speaking_length_mm").strip());
        Optional<CommonSetup> common =
                length_mm.isPresent() ? CommonSetup.find(length_mm.getAsDouble()) : Optional.empty();
        Map<String, RangePart> all = new LinkedHashMap<>();
        FIELDS.forEach((field, quantity) -> all.put(
                field,
                new RangePart(
                        common.flatMap(row -> row.find(quantity)),
                        DecimalText.read(typed.raw(field).strip()))));
        return all;
    }

    String words() {
        return range.map(common -> "common " + Figures.plain(common.low()) + " – " + Figures.plain(common.high()))
                .orElse("");
    }

    String source() {
        return range.map(CommonRange::source).orElse("");
    }

    boolean outside() {
        return value.isPresent()
                && range.filter(common -> !common.holds(value.getAsDouble())).isPresent();
    }

    /** Where the value stands on a scale of 60, the band from 20 to 40; empty without a value. */
    Optional<String> mark() {
        return range.filter(common -> value.isPresent())
                .map(common -> 20 + 20 * (value.getAsDouble() - common.low()) / (common.high() - common.low()))
                .map(place -> Figures.fixed(Math.max(1, Math.min(59, place)), 1));
    }
}
