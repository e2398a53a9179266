package afterlength.craft.setup;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The places a map of the bow looks at.
 *
 * @param semitones stops above the open string, 0 for open
 * @param distances_mm of the bow from the bridge
 * @param forces_N of the bow
 * @param farthestPart places are left out where the bow stands farther from the bridge than this part of the sounding string
 */
public record BowMapAxes(
        List<Integer> semitones, List<Double> distances_mm, List<Double> forces_N, double farthestPart) {
    /** Players move the bow towards the bridge when they stop high, though less than in proportion. */
    private static final double USUAL_FARTHEST_PART = 0.25;

    public BowMapAxes {
        semitones = List.copyOf(semitones);
        distances_mm = List.copyOf(distances_mm);
        forces_N = List.copyOf(forces_N);
    }

    /** Every place between finger and bridge, however far out. */
    public BowMapAxes(List<Integer> semitones, List<Double> distances_mm, List<Double> forces_N) {
        this(semitones, distances_mm, forces_N, 1);
    }

    /**
     * Open to two octaves; a thirty-second, a sixteenth and an eighth of the open string from the bridge, between which violinists
     * play (docs/sources.md#bow-hair-width), but never beyond a quarter of the sounding string, twice the farthest of these;
     * forces of normal violin playing (docs/sources.md#askenfelt).
     */
    public static BowMapAxes usual(double speakingLength_mm) {
        return new BowMapAxes(
                IntStream.rangeClosed(0, 24).boxed().toList(),
                List.of(speakingLength_mm / 32, speakingLength_mm / 16, speakingLength_mm / 8),
                List.of(0.3, 1.0, 1.5),
                USUAL_FARTHEST_PART);
    }

    BowMapAxes withoutForce() {
        return new BowMapAxes(semitones, distances_mm, List.of(0.0), farthestPart);
    }

    BowMapAxes heaviestOnly() {
        return new BowMapAxes(semitones, distances_mm, List.of(Collections.max(forces_N)), farthestPart);
    }

    static double stopped_mm(double speakingLength_mm, int semitones) {
        return speakingLength_mm * Math.pow(2, -semitones / 12.0);
    }
}
