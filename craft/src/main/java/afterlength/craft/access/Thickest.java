package afterlength.craft.access;

import java.util.Optional;

/** The thickest section of one width among the turns looked at so far, all of one hole. */
final class Thickest {
    private final double width;
    private double thickness;
    private Optional<PlacedSection> found = Optional.empty();

    /** Only what is thicker than the floor counts. */
    Thickest(double width_mm, double floor_mm) {
        width = width_mm;
        thickness = floor_mm;
    }

    /** True when the section is thicker at this turn than at all before. */
    boolean look(TurnedHole hole) {
        LevelBar bar = hole.thickest(width, thickness);
        if (bar.isFound()) {
            thickness = bar.thickness();
            found = Optional.of(hole.placed(bar, width));
        }
        return bar.isFound();
    }

    double width_mm() {
        return width;
    }

    /** The floor while nothing is thicker. */
    double thickness_mm() {
        return thickness;
    }

    boolean isFound() {
        return found.isPresent();
    }

    Optional<PlacedSection> found() {
        return found;
    }
}
