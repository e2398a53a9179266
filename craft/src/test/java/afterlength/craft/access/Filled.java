package afterlength.craft.access;

import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;

/** The carried thing filled with points, at many poses, against the plate by another library than our own counting of edges. */
final class Filled {
    private static final double POINTS_MM = 0.3;
    private static final double POSES_MM = 0.2;
    /** Points on a face that just touches are moved by rounding, no more. */
    private static final double ROUNDING_MM = 1e-9;

    private final Cavity cavity;
    private final IndexedPointInAreaLocator hole;

    Filled(Cavity cavity) {
        this.cavity = cavity;
        hole = new IndexedPointInAreaLocator(Figures.polygon(cavity.hole()));
    }

    /** Poses at which some point of the thing lies in the plate or under the floor. */
    long collisions(Carried carried, Motion motion) {
        return motion.closely(carried.reach_mm(), POSES_MM).stream()
                .filter(pose -> carried.boxes().stream().anyMatch(box -> meets(box, pose)))
                .count();
    }

    private boolean meets(Box box, Pose pose) {
        for (double along = box.from_mm(); along < box.to_mm() + POINTS_MM; along += POINTS_MM) {
            for (double up = box.bottom_mm(); up < box.top_mm() + POINTS_MM; up += POINTS_MM) {
                for (double across = box.left_mm(); across < box.right_mm() + POINTS_MM; across += POINTS_MM) {
                    double[] place = pose.place(
                            Math.min(along, box.to_mm()), Math.min(across, box.right_mm()), Math.min(up, box.top_mm()));
                    if (isSolid(place)) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private boolean isSolid(double[] place) {
        boolean inPlate = place[2] < -ROUNDING_MM && place[2] > -cavity.plate_mm() + ROUNDING_MM;
        return place[2] < cavity.floor_mm() - ROUNDING_MM
                || (inPlate && hole.locate(new Coordinate(place[0], place[1])) == Location.EXTERIOR);
    }
}
