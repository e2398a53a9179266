package afterlength.craft.setup;

import afterlength.craft.units.Force;
import afterlength.craft.units.Frequency;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * One string of a set at its pitch.
 *
 * @param downforce on the bridge, or null when the break over it is not known
 */
public record StringLoad(
        String note,
        Frequency frequency,
        double linearDensity_g_m,
        Force tension,
        @Nullable Force downforce) {
    public Optional<Force> findDownforce() {
        return Optional.ofNullable(downforce);
    }
}
