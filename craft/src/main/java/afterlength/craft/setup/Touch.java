package afterlength.craft.setup;

/**
 * How a string is played.
 *
 * @param stopped_mm from the bridge to the finger; the speaking length when the string is open
 * @param give_mm_N how far the string gives way under the bow for each newton; 0 when the bow does not press
 */
record Touch(double stopped_mm, double give_mm_N, double force_N) {
    /** The give of a string held at bridge and finger: {@code b (S - b) / (T S)}. */
    static Touch of(double stopped_mm, double distance_mm, double force_N, double tension_N) {
        double give_mm_N = StringMechanics.deflection_mm(1, distance_mm, stopped_mm, tension_N);
        return new Touch(stopped_mm, give_mm_N, force_N);
    }

    static Touch light(double stopped_mm) {
        return new Touch(stopped_mm, 0, 0);
    }

    double depth_mm() {
        return force_N == 0 ? 0 : force_N * give_mm_N;
    }
}
