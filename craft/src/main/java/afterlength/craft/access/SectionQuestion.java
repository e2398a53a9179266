package afterlength.craft.access;

import afterlength.craft.geometry.Outline;

/**
 * A straight bar before a sound-hole.
 *
 * @param hole the edge of the hole
 * @param section of the bar
 * @param clearance_mm the air wanted on every side
 * @param plate_mm thickness of the plate at the hole
 */
public record SectionQuestion(Outline hole, Section section, double clearance_mm, double plate_mm) {
    /** The working clearance on every side; our own choice of what a hand can steer through. */
    public static final double USUAL_CLEARANCE_MM = 0.3;

    /** A belly at the hole, for where nothing was measured. Source: docs/sources.md#riechers-1895. */
    public static final double USUAL_PLATE_MM = 2.7;
}
