package afterlength.craft.setup;

/**
 * Where a bow playing one string alone meets something on either side; not a number where nothing is known to be met.
 *
 * @param bass_rad the steepest angle before it meets what lies on the bass side
 * @param treble_rad the flattest angle before it meets what lies on the treble side
 * @param margin_mm of the string's upper side over the line lying on both neighbours
 * @param meets_N the bow force at which no room is left between the two; 0 when there is none even without force
 */
record BowLimits(double bass_rad, double treble_rad, double margin_mm, double meets_N) {
    /** Room between the two limits, negative when they have crossed. */
    double opening_rad() {
        return bass_rad - treble_rad;
    }

    boolean hasBoth() {
        return !Double.isNaN(bass_rad) && !Double.isNaN(treble_rad);
    }
}
