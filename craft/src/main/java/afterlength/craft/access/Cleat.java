package afterlength.craft.access;

/** A cleat as cut: along the arm that carries it, across it, and thick. */
public record Cleat(double length_mm, double width_mm, double thickness_mm) {
    public Cleat {
        if (!(length_mm > 0 && width_mm > 0 && thickness_mm > 0)) {
            throw new IllegalArgumentException("cleat " + length_mm + " × " + width_mm + " × " + thickness_mm
                    + " mm is none; all three must be more than 0 mm");
        }
    }
}
