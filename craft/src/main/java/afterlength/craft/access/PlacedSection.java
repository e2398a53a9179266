package afterlength.craft.access;

import afterlength.craft.geometry.Point;
import java.util.List;

/**
 * A section lying somewhere in the hole.
 *
 * @param turn_deg from the x axis towards the y axis, along the width of the section; 0 up to 180
 */
public record PlacedSection(Section section, Point centre, double turn_deg) {
    /** The four corners in order round the section. */
    public List<Point> corners() {
        double half_w = section.width_mm() / 2;
        double half_t = section.thickness_mm() / 2;
        return List.of(at(-half_w, -half_t), at(half_w, -half_t), at(half_w, half_t), at(-half_w, half_t));
    }

    /** The same figure with width and thickness exchanged. */
    PlacedSection onItsSide() {
        return new PlacedSection(section.onItsSide(), centre, (turn_deg + 90) % 180);
    }

    /** A place given along the width and along the thickness, from the centre. */
    Point at(double along_mm, double across_mm) {
        double turn = Math.toRadians(turn_deg);
        return centre.plus(
                along_mm * Math.cos(turn) - across_mm * Math.sin(turn),
                along_mm * Math.sin(turn) + across_mm * Math.cos(turn));
    }
}
