package afterlength.workshop.setup;

import afterlength.craft.setup.BassTreble;
import afterlength.craft.setup.BridgeInputs;
import afterlength.craft.setup.RadiusCrown;
import afterlength.craft.setup.Waist;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Everything that lies on the bench for one set-up.
 *
 * @param inputs what the bridge is drawn from
 * @param crownRadius_mm the radius to compare with, also where the crown is another
 * @param template the maker's own crown as it was typed, also where the crown is another
 * @param notes the open note of each string, from bass to treble, empty where it was not told
 * @param readings what may be known or not; scoop, waist and radius at the nut stand in the inputs as well
 */
public record SetupBench(
        BridgeInputs inputs,
        double crownRadius_mm,
        String template,
        List<String> notes,
        Map<BenchReading, Double> readings) {
    public SetupBench {
        notes = List.copyOf(notes);
        readings = Map.copyOf(readings);
    }

    /** A bridge of which nothing else is known. */
    public static SetupBench of(BridgeInputs inputs) {
        double radius_mm = inputs.crown() instanceof RadiusCrown circle
                ? circle.radius_mm()
                : inputs.board().radius_mm();
        List<String> notes = Collections.nCopies(inputs.strings().size(), "");
        return new SetupBench(inputs, radius_mm, "", notes, readings(inputs));
    }

    public SetupBench withTemplate(String other) {
        return new SetupBench(inputs, crownRadius_mm, other, notes, readings);
    }

    public SetupBench withNotes(List<String> other) {
        return new SetupBench(inputs, crownRadius_mm, template, other, readings);
    }

    public SetupBench with(BenchReading reading, double value) {
        Map<BenchReading, Double> more = new EnumMap<>(BenchReading.class);
        more.putAll(readings);
        more.put(reading, value);
        return new SetupBench(inputs, crownRadius_mm, template, notes, more);
    }

    public Optional<Double> find(BenchReading reading) {
        return Optional.ofNullable(readings.get(reading));
    }

    private static Map<BenchReading, Double> readings(BridgeInputs inputs) {
        Map<BenchReading, Double> readings = new EnumMap<>(BenchReading.class);
        @Nullable Double radiusNut_mm = inputs.board().radiusNut_mm();
        @Nullable BassTreble scoop_mm = inputs.board().scoop_mm();
        @Nullable Waist waist = inputs.waist();
        if (radiusNut_mm != null) {
            readings.put(BenchReading.BOARD_RADIUS_NUT, radiusNut_mm);
        }
        if (scoop_mm != null) {
            readings.put(BenchReading.SCOOP_BASS, scoop_mm.bass_mm());
            readings.put(BenchReading.SCOOP_TREBLE, scoop_mm.treble_mm());
        }
        if (waist != null) {
            readings.put(BenchReading.WAIST_WIDTH, waist.width_mm());
            readings.put(BenchReading.EDGE_DROP, waist.edgeDrop_mm());
        }
        return readings;
    }
}
