package afterlength.craft.access;

import afterlength.craft.geometry.Outline;
import afterlength.craft.geometry.Point;
import java.util.List;

/**
 * A second look at a motion, which knows nothing of how it was found: every box is filled with points, and no point may lie in the
 * plate or below the floor at any of many poses along the way.
 */
final class DenseCheck {
    private static final double POINTS_MM = 0.6;
    private static final double POSES_MM = 0.5;

    private final Cavity cavity;
    private final List<Point> edge;

    private DenseCheck(Cavity cavity) {
        this.cavity = cavity;
        Outline hole = cavity.hole();
        edge = hole.points();
    }

    static boolean passes(Cavity cavity, Carried carried, Motion motion) {
        DenseCheck check = new DenseCheck(cavity);
        return motion.closely(carried.reach_mm(), POSES_MM).stream()
                .allMatch(pose -> carried.boxes().stream().allMatch(box -> check.isFree(box, pose)));
    }

    private boolean isFree(Box box, Pose pose) {
        int along = count(box.length_mm());
        int across = count(box.width_mm());
        int up = count(box.height_mm());
        for (int i = 0; i <= along; i++) {
            for (int k = 0; k <= up; k++) {
                for (int j = 0; j <= across; j++) {
                    double[] place = pose.place(
                            box.from_mm() + box.length_mm() * i / along,
                            box.left_mm() + box.width_mm() * j / across,
                            box.bottom_mm() + box.height_mm() * k / up);
                    if (isSolid(place[0], place[1], place[2])) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private static int count(double length_mm) {
        return Math.max(1, (int) Math.ceil(length_mm / POINTS_MM));
    }

    private boolean isSolid(double x_mm, double y_mm, double z_mm) {
        if (z_mm < cavity.floor_mm()) {
            return true;
        }
        return z_mm < 0 && z_mm > -cavity.plate_mm() && !isInHole(x_mm, y_mm);
    }

    private boolean isInHole(double x_mm, double y_mm) {
        boolean inside = false;
        Point before = edge.get(edge.size() - 1);
        for (Point here : edge) {
            if (here.y_mm() > y_mm != before.y_mm() > y_mm) {
                double share = (y_mm - before.y_mm()) / (here.y_mm() - before.y_mm());
                inside ^= x_mm < before.x_mm() + (here.x_mm() - before.x_mm()) * share;
            }
            before = here;
        }
        return inside;
    }
}
