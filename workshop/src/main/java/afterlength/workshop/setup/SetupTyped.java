package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.ClearanceConvention;
import afterlength.workshop.desk.Figures;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A set-up turned back into the fields of the page, so that every value is typed once. */
final class SetupTyped {
    private final Map<String, String> typed = new HashMap<>();

    private SetupTyped() {}

    static Map<String, String> of(SetupBench bench) {
        SetupTyped fields = new SetupTyped();
        fields.inputs(bench.inputs());
        fields.crown(bench);
        List<StringRow> strings = StringRows.of(bench);
        fields.typed.put("string_count", Integer.toString(strings.size()));
        for (int n = 0; n < strings.size(); n++) {
            fields.string("strings/" + n + "/", strings.get(n));
        }
        bench.readings().forEach((reading, value) -> fields.put(reading.field(), value));
        return fields.typed;
    }

    private void inputs(BridgeInputs in) {
        put("speaking_length_mm", in.speakingLength_mm());
        put("board_length_mm", in.board().length_mm());
        put("board_radius_mm", in.board().radius_mm());
        put("nut_spacing_mm", outer_mm(in.nutSpacing().places_mm(in.strings())));
        put("bridge_spacing_mm", outer_mm(in.bridgeSpacing().places_mm(in.strings())));
        pair("nut_clearance_mm", in.nutClearance_mm());
        pair("board_end_clearance_mm", in.boardEndClearance_mm());
        put("projection_mm", in.projection_mm());
        if (in.grooveFraction() != BridgeInputs.USUAL_GROOVE_FRACTION) {
            put("groove_fraction", in.grooveFraction());
        }
        typed.put(
                "clearance_convention", in.clearanceConvention() == ClearanceConvention.UPRIGHT ? "upright" : "square");
        typed.put("spacing", SpacingKind.of(in.bridgeSpacing()).name());
    }

    private void crown(SetupBench bench) {
        typed.put("crown", CrownKind.of(bench.inputs().crown()).name());
        put("crown/radius_mm", bench.crownRadius_mm());
        typed.put(SetupForm.TEMPLATE, bench.template());
    }

    private void string(String at, StringRow string) {
        typed.put(at + "name", string.name());
        typed.put(at + "note", string.note());
        put(at + "diameter_mm", string.diameterMm());
        put(at + "tension_N", string.tensionN());
        put(at + "linear_density_g_m", string.linearDensityGM());
        put(at + "nut_y_mm", string.nutYMm());
        put(at + "bridge_y_mm", string.bridgeYMm());
    }

    private static double outer_mm(double[] places_mm) {
        double outer_mm = places_mm[places_mm.length - 1] - places_mm[0];
        return Math.rint(outer_mm * 1e6) / 1e6;
    }

    private void pair(String name, BassTreble pair) {
        put(name + "/bass", pair.bass_mm());
        put(name + "/treble", pair.treble_mm());
    }

    private void put(String name, @Nullable Double value) {
        if (value != null) {
            typed.put(name, Figures.typed(value));
        }
    }
}
