package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;
import afterlength.craft.units.Problem;
import java.util.List;

/** What makes a post impossible, all at once. */
final class PostChecks {
    private static final Permitted PLACE = Permitted.from(-50, 50, "mm");
    private static final Permitted DIAMETER = Permitted.above(0, 40, "mm");
    private static final Permitted RIBS = Permitted.above(0, 400, "mm");
    private static final Permitted THICKNESS = Permitted.above(0, 20, "mm");
    private static final Permitted HEIGHT = Permitted.from(-50, 150, "mm");
    private static final Permitted SLOPE = Permitted.from(-45, 45, "degrees");
    private static final Permitted ERROR = Permitted.from(0, 10, "");

    private final ProblemList problems = new ProblemList();

    private PostChecks() {}

    static List<Problem> problems(PostInputs inputs) {
        PostChecks checks = new PostChecks();
        checks.place(inputs);
        checks.plate("/belly", "belly", inputs.belly());
        checks.plate("/back", "back", inputs.back());
        checks.errors(inputs.errors());
        return checks.problems.list();
    }

    private void place(PostInputs inputs) {
        String foot = "Measure from the treble foot of the bridge.";
        problems.require(PLACE, "/behind_foot_mm", "The place behind the foot", inputs.behindFoot_mm(), foot);
        problems.require(PLACE, "/inside_foot_mm", "The place inside the foot", inputs.insideFoot_mm(), foot);
        problems.require(
                DIAMETER, "/diameter_mm", "The diameter of the post", inputs.diameter_mm(), "Measure the post.");
        problems.require(
                RIBS,
                "/rib_height_mm",
                "The rib height",
                inputs.ribHeight_mm(),
                "Measure between the gluing planes of belly and back.");
    }

    private void plate(String at, String name, Plate plate) {
        problems.require(
                THICKNESS,
                at + "/thickness_mm",
                "The thickness of the " + name,
                plate.thickness_mm(),
                "Measure square to the surface at the post.");
        if (plate.surface() instanceof PlateSurface.Sloped sloped) {
            height(at + "/height_mm", name, sloped.height_mm());
            slope(at + "/slope_along_deg", name + " along", sloped.slopeAlong_deg());
            slope(at + "/slope_across_deg", name + " across", sloped.slopeAcross_deg());
        } else if (plate.surface() instanceof PlateSurface.Heights heights) {
            points(at + "/heights_mm", name, heights.points());
        }
    }

    private void height(String at, String name, double height_mm) {
        String what = "The height of the " + name;
        problems.require(HEIGHT, at, what, height_mm, "Measure the outside over the gluing plane.");
    }

    private void slope(String at, String which, double slope_deg) {
        problems.require(
                SLOPE, at, "The slope of the " + which, slope_deg, "Read it with a bevel from the gluing plane.");
    }

    private void points(String at, String name, List<PlateHeight> points) {
        boolean usable = true;
        for (int i = 0; i < points.size(); i++) {
            PlateHeight point = points.get(i);
            height(at + "/" + i, name, point.height_mm());
            boolean placed = PLACE.holds(point.along_mm()) && PLACE.holds(point.across_mm());
            if (!placed) {
                problems.add(
                        at + "/" + i,
                        point,
                        "Point " + (i + 1) + " of the " + name + " lies at "
                                + PlainNumber.of(point.along_mm(), "mm") + " along and "
                                + PlainNumber.of(point.across_mm(), "mm")
                                + " across; both must be within 50 mm of the post. Measure from the axis of the post.");
            }
            usable &= placed && HEIGHT.holds(point.height_mm());
        }
        if (usable && Paraboloid.find(points).isEmpty()) {
            problems.add(
                    at,
                    points.size(),
                    "The " + points.size() + " heights of the " + name
                            + " do not fix a surface; at least 5 are needed, not all in line. Measure on the axis of the post and"
                            + " on either side of it, along and across.");
        }
    }

    private void errors(PostErrors errors) {
        String advice = "Say how closely it was read.";
        problems.require(ERROR, "/errors/height_mm", "The reading error of heights", errors.height_mm(), advice);
        problems.require(
                ERROR, "/errors/thickness_mm", "The reading error of thickness", errors.thickness_mm(), advice);
        problems.require(ERROR, "/errors/rib_mm", "The reading error of the ribs", errors.rib_mm(), advice);
        problems.require(ERROR, "/errors/slope_deg", "The reading error of slopes", errors.slope_deg(), advice);
    }
}
