package afterlength.craft.setup;

/**
 * One string played in one place.
 *
 * @param semitones above the open string where that is how the place was named, otherwise 0
 * @param stopped_mm from the bridge to the finger; the speaking length when the string is open
 * @param give_mm_N how far the string gives way under the bow for each newton; not a number when its tension is not known
 */
record Played(
        int string,
        int semitones,
        double distance_mm,
        double stopped_mm,
        boolean isOpen,
        double give_mm_N,
        double force_N) {

    /** A string of this tension, its give that of a string held at bridge and finger: {@code b (S - b) / (T S)}. */
    static Played of(
            int string, double distance_mm, double stopped_mm, boolean isOpen, double tension_N, double force_N) {
        double give_mm_N = StringMechanics.deflection_mm(1, distance_mm, stopped_mm, tension_N);
        return new Played(string, 0, distance_mm, stopped_mm, isOpen, give_mm_N, force_N);
    }

    Played at(int semitones) {
        return new Played(string, semitones, distance_mm, stopped_mm, isOpen, give_mm_N, force_N);
    }

    double depth_mm() {
        return force_N == 0 ? 0 : force_N * give_mm_N;
    }
}
