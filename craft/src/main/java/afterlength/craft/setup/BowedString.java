package afterlength.craft.setup;

import afterlength.craft.units.Angle;
import afterlength.craft.units.Force;
import afterlength.craft.units.Length;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * One string under the bow. Angles of the bow are positive when it rises to the treble.
 *
 * @param limitBass the steepest angle, before the bow meets the neighbour or edge on the bass side; null when none is known
 * @param limitTreble the flattest angle, before it meets the neighbour or edge on the treble side; null when none is known
 * @param margin of an inner string over the line lying on its two neighbours, negative when the bow meets one of them first
 * @param meetsNeighboursAt the force at which no room is left, or null without two limits or without tension
 */
public record BowedString(
        String name,
        @Nullable Angle limitBass,
        @Nullable Angle limitTreble,
        @Nullable Length margin,
        @Nullable Force meetsNeighboursAt) {

    static BowedString of(String name, boolean inner, BowLimits limits) {
        return new BowedString(
                name,
                Double.isNaN(limits.bass_rad()) ? null : Angle.ofRad(limits.bass_rad()),
                Double.isNaN(limits.treble_rad()) ? null : Angle.ofRad(limits.treble_rad()),
                inner ? Length.ofMm(limits.margin_mm()) : null,
                Double.isNaN(limits.meets_N()) ? null : Force.ofNewton(limits.meets_N()));
    }

    /** The room between the two limits, 0 when they have crossed; empty when one is not known. */
    public Optional<Angle> findClearAngle() {
        OptionalDouble opening_deg = findOpening_deg();
        return opening_deg.isEmpty()
                ? Optional.empty()
                : Optional.of(Angle.ofDeg(Math.max(0, opening_deg.getAsDouble())));
    }

    /** The same, and negative by how far the limits have crossed. */
    OptionalDouble findOpening_deg() {
        return limitBass == null || limitTreble == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(limitBass.deg() - limitTreble.deg());
    }

    public Optional<Angle> findLimitBass() {
        return Optional.ofNullable(limitBass);
    }

    public Optional<Angle> findLimitTreble() {
        return Optional.ofNullable(limitTreble);
    }

    public Optional<Length> findMargin() {
        return Optional.ofNullable(margin);
    }

    public Optional<Force> findForceMeetingNeighbours() {
        return Optional.ofNullable(meetsNeighboursAt);
    }
}
