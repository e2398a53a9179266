package afterlength.craft.setup;

import java.util.Map;

/**
 * Where and how hard the bow plays. Any number can stand here; {@link BowChecks} names what is wrong.
 *
 * @param distance_mm from the bridge
 * @param stoppedAt_mm from the bridge to the finger, by name of the string; strings not named are open
 */
public record BowPlace(double distance_mm, double force_N, Map<String, Double> stoppedAt_mm) {
    public BowPlace {
        stoppedAt_mm = Map.copyOf(stoppedAt_mm);
    }

    public static BowPlace onOpenStrings(double distance_mm, double force_N) {
        return new BowPlace(distance_mm, force_N, Map.of());
    }
}
