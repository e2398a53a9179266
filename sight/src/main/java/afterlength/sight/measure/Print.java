package afterlength.sight.measure;

import afterlength.craft.geometry.Point;
import afterlength.sight.camera.Sighting;
import java.util.List;
import java.util.Optional;

/**
 * How large the card really was printed: printers scale by up to per cents, and differently along and across. Both check lines
 * are measured on the print once; the program then knows it to 0.05 %, and to 1 % before.
 *
 * @param across true millimetres for one on the card, along the level check line
 * @param along likewise along the upright check line
 * @param deviation share, one standard deviation
 */
public record Print(double across, double along, double deviation) {
    public static final Print UNCHECKED = new Print(1, 1, 0.01);

    public static final double CHECK_LINE_MM = 100;

    /** Beyond this it is a slip of the ruler rather than a printer. */
    public static final double SHORTEST_CHECK_LINE_MM = 90;

    public static final double LONGEST_CHECK_LINE_MM = 110;

    private static final double CHECKED = 0.0005;

    /** A print whose check lines were measured: the level one, then the upright one. */
    public static Print checked(double level_mm, double upright_mm) {
        return new Print(level_mm / CHECK_LINE_MM, upright_mm / CHECK_LINE_MM, CHECKED);
    }

    public boolean isChecked() {
        return deviation <= CHECKED;
    }

    /** Where a place of the card as designed lies on the print. */
    public Point printed(Point onCard) {
        return Point.of(onCard.x_mm() * across, onCard.y_mm() * along);
    }

    /**
     * The same corners on a print that is off by one deviation across and as much the other way along: what two readings of a
     * ruler, each off for itself, make of it beside a common scale.
     */
    List<Sighting> strained(List<Sighting> sightings) {
        double by = deviation / Math.sqrt(2);
        return sightings.stream()
                .map(one -> new Sighting(
                        Point.of(one.place().x_mm() * (1 + by), one.place().y_mm() * (1 - by)), one.seen()))
                .toList();
    }

    /** What is worth saying about the print itself. */
    Optional<Caveat> findCaveat() {
        return isChecked() ? Optional.empty() : Optional.of(new Caveat.PrintUnchecked());
    }
}
