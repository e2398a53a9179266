package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;
import java.util.List;

/** The numbers of the crown by themselves; whether they fit the strings is for {@link CrownChecks}. */
final class CrownValueChecks {
    private static final Permitted RADIUS = Permitted.above(0, 1e9, "mm");

    private CrownValueChecks() {}

    static void look(Crown crown, ProblemList problems) {
        if (crown instanceof RadiusCrown circle) {
            String advice = "Lay a radius template on the crown.";
            problems.require(RADIUS, "/crown/radius_mm", "The crown radius", circle.radius_mm(), advice);
        } else if (crown instanceof TemplateCrown template) {
            points(template.points(), problems);
        }
    }

    private static void points(List<CrossPoint> points, ProblemList problems) {
        if (points.size() < 2) {
            problems.add(
                    "/crown/template_mm",
                    points.size(),
                    "The template has " + points.size()
                            + " points; it needs at least 2. Read off its edge from bass to treble.");
        }
        for (int i = 0; i < points.size(); i++) {
            point(points, i, problems);
        }
    }

    private static void point(List<CrossPoint> points, int i, ProblemList problems) {
        CrossPoint point = points.get(i);
        String at = "/crown/template_mm/" + i;
        String which = "Point " + (i + 1) + " of the template";
        if (!Double.isFinite(point.y_mm()) || !Double.isFinite(point.z_mm())) {
            problems.add(
                    at,
                    point,
                    which + " is not a pair of numbers; it must be y and z in millimetres. Measure it again.");
        } else if (i > 0 && point.y_mm() <= points.get(i - 1).y_mm()) {
            problems.add(
                    at,
                    point,
                    which + " lies at y " + PlainNumber.of(point.y_mm(), "mm")
                            + "; it must lie to the treble side of the point before it, at "
                            + PlainNumber.of(points.get(i - 1).y_mm(), "mm")
                            + ". List the points from bass to treble.");
        }
    }
}
