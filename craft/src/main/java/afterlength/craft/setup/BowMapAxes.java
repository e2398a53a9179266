package afterlength.craft.setup;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The places a map of the bow looks at.
 *
 * @param semitones stops above the open string, 0 for open
 * @param distances_mm of the bow from the bridge
 * @param forces_N of the bow
 */
public record BowMapAxes(List<Integer> semitones, List<Double> distances_mm, List<Double> forces_N) {
    public BowMapAxes {
        semitones = List.copyOf(semitones);
        distances_mm = List.copyOf(distances_mm);
        forces_N = List.copyOf(forces_N);
    }

    /**
     * Open to two octaves; a thirty-second, a sixteenth and an eighth of the string from the bridge, between which violinists play
     * (docs/sources.md#bow-hair-width); forces of normal violin playing (docs/sources.md#askenfelt).
     */
    public static BowMapAxes usual(double speakingLength_mm) {
        return new BowMapAxes(
                IntStream.rangeClosed(0, 24).boxed().toList(),
                List.of(speakingLength_mm / 32, speakingLength_mm / 16, speakingLength_mm / 8),
                List.of(0.3, 1.0, 1.5));
    }

    static double stopped_mm(double speakingLength_mm, int semitones) {
        return speakingLength_mm * Math.pow(2, -semitones / 12.0);
    }
}
