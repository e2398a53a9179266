package afterlength.craft.access;

/**
 * A clamp that works through the sound-hole: a jaw under the plate, an arm below it that runs back to the hole, and a post that comes
 * up through it.
 *
 * @param throat_mm from the middle of the jaw to the near side of the post
 * @param jawLength_mm along the arm
 * @param jawHeight_mm of the jaw, under the cleat
 * @param arm_mm how thick the arm is, upright, and how thick the post is along the arm
 * @param armWidth_mm of arm and post across
 */
public record Clamp(
        double throat_mm,
        double jawLength_mm,
        double jawWidth_mm,
        double jawHeight_mm,
        double arm_mm,
        double armWidth_mm) {
    public Clamp {
        if (!(jawLength_mm > 0 && jawWidth_mm > 0 && jawHeight_mm > 0 && arm_mm > 0 && armWidth_mm > 0)) {
            throw new IllegalArgumentException("clamp with a measure of 0 mm or less; all must be more than 0 mm");
        }
        if (!(throat_mm > jawLength_mm / 2)) {
            throw new IllegalArgumentException("throat " + throat_mm + " mm is no longer than half the jaw, "
                    + jawLength_mm / 2 + " mm; measure from the middle of the jaw to the post");
        }
    }
}
