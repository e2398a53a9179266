package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import java.util.Optional;

/**
 * Questions to one hole. The search over all turns runs on an outline with fewer corners; what it finds is laid into the outline as
 * it was traced, so that every section named does fit.
 */
final class HoleSearch {
    /** What the simplified hole may be too wide or too thick by, over both sides. */
    private static final double SHRUNK_MM = 2 * Frontier.SIMPLIFIED_MM;

    private final Outline outline;
    private final Turns traced;
    private final SearchedHole simplified;
    private double lastTurn_deg;

    HoleSearch(Outline outline) {
        this.outline = outline;
        traced = new Turns(outline);
        simplified = new SearchedHole(simplified(outline));
    }

    private static Outline simplified(Outline outline) {
        Outline simple = outline.simplified(Frontier.SIMPLIFIED_MM);
        return simple.isSimple() ? simple : outline;
    }

    double longest_mm() {
        return traced.longest_mm();
    }

    double area_mm2() {
        double twice = 0;
        var points = outline.points();
        for (int i = 0; i < points.size(); i++) {
            var a = points.get(i);
            var b = points.get((i + 1) % points.size());
            twice += a.x_mm() * b.y_mm() - b.x_mm() * a.y_mm();
        }
        return Math.abs(twice) / 2;
    }

    /** The thickest section of a width, within {@link Frontier#TOLERANCE_MM}. */
    Optional<PlacedSection> findThickest(double width_mm) {
        Optional<PlacedSection> found =
                ThickestSection.find(simplified, width_mm + SHRUNK_MM, Frontier.SEARCHED_MM, lastTurn_deg);
        found.ifPresent(section -> lastTurn_deg = section.turn_deg());
        Thickest thickest = new Thickest(width_mm, ThickestSection.THINNEST_MM);
        found.ifPresent(section -> thickest.look(traced.at(Math.toRadians(section.turn_deg()))));
        traced.alongLongestEdges().forEach(thickest::look);
        return thickest.found();
    }

    /** Some place for a section; none when there is none, or one so tight that the simplified hole decides. */
    Optional<PlacedSection> findPlace(Section section) {
        double width_mm = section.width_mm();
        double thickness_mm = section.thickness_mm();
        if (thickness_mm > width_mm) {
            return findPlace(section.onItsSide()).map(PlacedSection::onItsSide);
        }
        Optional<PlacedSection> here = traced.at(Math.toRadians(lastTurn_deg)).findThickest(width_mm);
        if (here.isPresent() && here.get().section().thickness_mm() >= thickness_mm) {
            return here;
        }
        Optional<PlacedSection> found = ThickestSection.findThicker(simplified, width_mm, thickness_mm, 2 * SHRUNK_MM);
        found.ifPresent(placed -> lastTurn_deg = placed.turn_deg());
        return found.flatMap(
                        placed -> traced.at(Math.toRadians(placed.turn_deg())).findThickest(width_mm))
                .filter(placed -> placed.section().thickness_mm() >= thickness_mm);
    }

    /** The thickest section of a width, turned to and fro until it can be no thicker. */
    Optional<PlacedSection> findThickestSharply(double width_mm) {
        return findThickest(width_mm).map(section -> SharpTurn.of(traced, section, Frontier.SEARCHED_MM));
    }
}
