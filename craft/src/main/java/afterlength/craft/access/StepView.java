package afterlength.craft.access;

import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * One pose of a way in, cut open along the heading of the arm: x ahead from the middle of the gluing face, y upwards from the outer
 * face of the plate, both in millimetres.
 *
 * @param boxes each box of the carried thing, by its four corners
 * @param plate the pieces of the plate to both sides of the hole, by their four corners
 */
public record StepView(List<List<Point>> boxes, List<List<Point>> plate) {
    public StepView {
        boxes = List.copyOf(boxes);
        plate = List.copyOf(plate);
    }

    /** As far to both sides as asked. */
    public static StepView of(Cavity cavity, Carried carried, Pose pose, double reach_mm) {
        return new StepView(
                carried.boxes().stream().map(box -> corners(box, pose)).toList(), plate(cavity, pose, reach_mm));
    }

    private static List<Point> corners(Box box, Pose pose) {
        return List.of(
                seen(pose, box.from_mm(), box.bottom_mm()),
                seen(pose, box.to_mm(), box.bottom_mm()),
                seen(pose, box.to_mm(), box.top_mm()),
                seen(pose, box.from_mm(), box.top_mm()));
    }

    private static Point seen(Pose pose, double along_mm, double up_mm) {
        double tilt = Math.toRadians(pose.tilt_deg());
        return Point.of(
                along_mm * Math.cos(tilt) - up_mm * Math.sin(tilt),
                pose.z_mm() + along_mm * Math.sin(tilt) + up_mm * Math.cos(tilt));
    }

    private static List<List<Point>> plate(Cavity cavity, Pose pose, double reach_mm) {
        double heading = Math.toRadians(pose.heading_deg());
        double ahead_mm = pose.x_mm() * Math.cos(heading) + pose.y_mm() * Math.sin(heading);
        double aside_mm = pose.y_mm() * Math.cos(heading) - pose.x_mm() * Math.sin(heading);
        List<List<Point>> plate = new ArrayList<>();
        double from_mm = -reach_mm;
        for (Span gap : Gaps.along(cavity.hole(), pose.heading_deg()).between(aside_mm - 0.01, aside_mm + 0.01)) {
            addPiece(plate, from_mm, Math.min(reach_mm, gap.low() - ahead_mm), cavity.plate_mm());
            from_mm = Math.max(from_mm, gap.high() - ahead_mm);
        }
        addPiece(plate, from_mm, reach_mm, cavity.plate_mm());
        return plate;
    }

    private static void addPiece(List<List<Point>> plate, double from_mm, double to_mm, double thickness_mm) {
        if (from_mm < to_mm) {
            plate.add(List.of(
                    Point.of(from_mm, -thickness_mm),
                    Point.of(to_mm, -thickness_mm),
                    Point.of(to_mm, 0),
                    Point.of(from_mm, 0)));
        }
    }
}
