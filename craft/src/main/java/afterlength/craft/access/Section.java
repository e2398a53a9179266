package afterlength.craft.access;

/** The cross-section of a straight bar in millimetres; which of its two measures is the larger does not matter. */
public record Section(double width_mm, double thickness_mm) {
    public Section {
        if (!(width_mm > 0 && thickness_mm > 0 && Double.isFinite(width_mm + thickness_mm))) {
            throw new IllegalArgumentException(
                    "section " + width_mm + " × " + thickness_mm + " mm is none; both measures must be more than 0 mm");
        }
    }

    /** The same section with width and thickness exchanged. */
    Section onItsSide() {
        double formerWidth_mm = width_mm;
        return new Section(thickness_mm, formerWidth_mm);
    }

    /** The section with air all round it. */
    public Section withClearance(double aSide_mm) {
        return new Section(width_mm + 2 * aSide_mm, thickness_mm + 2 * aSide_mm);
    }
}
