package afterlength.craft.setup;

/** Two lengths that belong together, one under the outer bass string and one under the outer treble string, in millimetres. */
public record BassTreble(double bass_mm, double treble_mm) {
    /** Linear between the two by string number, 0 for the outer bass string, {@code count - 1} for the outer treble string. */
    double ofString_mm(int string, int count) {
        return bass_mm + (treble_mm - bass_mm) * string / (count - 1);
    }

    double smaller_mm() {
        return Math.min(bass_mm, treble_mm);
    }

    double larger_mm() {
        return Math.max(bass_mm, treble_mm);
    }
}
