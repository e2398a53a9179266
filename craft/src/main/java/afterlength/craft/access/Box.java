package afterlength.craft.access;

/**
 * A box of what is carried through the hole, in millimetres from the middle of the cleat's gluing face: along the arm and away from
 * the jaw, across it, and up, in the direction the face looks.
 */
public record Box(double from_mm, double to_mm, double left_mm, double right_mm, double bottom_mm, double top_mm) {
    public Box {
        if (!(from_mm < to_mm && left_mm < right_mm && bottom_mm < top_mm)) {
            throw new IllegalArgumentException("box from " + from_mm + " to " + to_mm + ", " + left_mm + " to "
                    + right_mm + ", " + bottom_mm + " to " + top_mm + " mm is none; each range must run upwards");
        }
    }

    /** Lying evenly to both sides, its top at a height. */
    static Box of(double from_mm, double to_mm, double width_mm, double bottom_mm, double top_mm) {
        return new Box(from_mm, to_mm, -width_mm / 2, width_mm / 2, bottom_mm, top_mm);
    }

    double length_mm() {
        return to_mm - from_mm;
    }

    double width_mm() {
        return right_mm - left_mm;
    }

    double height_mm() {
        return top_mm - bottom_mm;
    }
}
