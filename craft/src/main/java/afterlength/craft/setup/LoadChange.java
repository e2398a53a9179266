package afterlength.craft.setup;

import afterlength.craft.units.Force;
import java.util.Optional;

/** Two sets, or one set at two pitch standards, side by side: what the body is relieved of or burdened with. */
public record LoadChange(StringSetLoad before, StringSetLoad after) {
    /** Positive when the new set pulls more. */
    public Force tension() {
        return Force.ofNewton(
                after.totalTension().newton() - before.totalTension().newton());
    }

    /** Positive when the bridge is pressed down more; empty when the break over the bridge is not known for both. */
    public Optional<Force> findDownforce() {
        return before.findTotalDownforce()
                .flatMap(old -> after.findTotalDownforce().map(now -> Force.ofNewton(now.newton() - old.newton())));
    }

    /** After over before; a pitch standard enters with its square. */
    public double ratio() {
        return after.totalTension().newton() / before.totalTension().newton();
    }
}
