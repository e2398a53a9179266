package afterlength.craft.glue;

import java.util.OptionalDouble;

/**
 * Seconds until the film reaches the gel point. Empty is more than ten minutes: the wood alone does not make the film gel in any
 * time worth counting.
 */
public record WindowSeconds(OptionalDouble low_s, OptionalDouble typical_s, OptionalDouble high_s) {
    /** Longer than this no gluing waits, and air and evaporation have taken over. */
    public static final double LONGEST_S = 600;
}
