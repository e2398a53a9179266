package afterlength.craft.access;

import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A way for a cleat, alone or on the jaw of a clamp, from outside through the sound-hole to its place under the crack.
 *
 * <p>The way is looked for in upright planes: the thing keeps its heading, tilts, sinks and shifts until it lies level under the plate
 * ({@link Threading}). A thing with a post has to come in along the plane in which it will stand; a cleat alone comes in where
 * the hole has most room and is then carried to its place under the plate. Every way is checked a second time by
 * {@link DenseCheck}; a way that does not hold there is not shown.
 *
 * <p>Left out: rolling about the arm, bending, and whatever stands inside but the back. So a way found may still meet the post or a
 * lining, and none found is no proof.
 */
public final class CleatPassage {
    private static final double HEADING_STEP_DEG = 5;
    private static final double ASIDE_STEP_MM = 1;
    /** So many planes, those with most room first, keep the search within seconds. */
    private static final int MOST_PLANES = 60;

    private final Cavity cavity;
    private final Carried carried;
    private final Pose goal;
    private final double clearance_mm;
    private final boolean level;

    private CleatPassage(Cavity cavity, Carried carried, Pose goal, double clearance_mm) {
        this.cavity = cavity;
        this.carried = carried;
        this.goal = goal;
        this.clearance_mm = clearance_mm;
        level = carried.boxes().stream().allMatch(box -> box.top_mm() <= 0);
    }

    /**
     * Looks for a way.
     *
     * @param crack the middle of the cleat's place
     * @param heading_deg how a cleat alone is to lie; a clamp turns as it must
     */
    public static MotionAnswer find(
            Cavity cavity, Carried carried, Point crack, double heading_deg, double clearance_mm, Watch watch) {
        Pose goal = new Pose(crack.x_mm(), crack.y_mm(), -cavity.plate_mm() - clearance_mm, heading_deg, 0);
        return new CleatPassage(cavity, carried, goal, clearance_mm).search(watch);
    }

    private record Plane(double heading_deg, double aside_mm, UprightPlane plane) {
        double room_mm() {
            return plane.room_mm();
        }

        Pose pose(Threading.Place place) {
            double heading = Math.toRadians(heading_deg);
            return new Pose(
                    place.ahead_mm() * Math.cos(heading) - aside_mm * Math.sin(heading),
                    place.ahead_mm() * Math.sin(heading) + aside_mm * Math.cos(heading),
                    place.z_mm(),
                    heading_deg,
                    place.tilt_deg());
        }
    }

    private MotionAnswer search(Watch watch) {
        List<Plane> planes = planes();
        for (int i = 0; i < planes.size(); i++) {
            if (!watch.goesOn((double) i / planes.size())) {
                return new MotionStopped();
            }
            Optional<Motion> motion = along(planes.get(i));
            if (motion.isPresent()) {
                return motion.get();
            }
        }
        return miss();
    }

    private List<Plane> planes() {
        List<Plane> planes = new ArrayList<>();
        for (double heading_deg = 0; heading_deg < 360; heading_deg += HEADING_STEP_DEG) {
            Gaps gaps = Gaps.along(cavity.hole(), heading_deg);
            if (!level) {
                planes.add(plane(gaps, heading_deg, aside(heading_deg)));
                continue;
            }
            for (double aside_mm = gaps.rightmost_mm(); aside_mm < gaps.leftmost_mm(); aside_mm += ASIDE_STEP_MM) {
                planes.add(plane(gaps, heading_deg, aside_mm));
            }
        }
        planes.removeIf(plane -> plane.room_mm() < 0);
        planes.sort(Comparator.comparingDouble(Plane::room_mm).reversed());
        return planes.subList(0, Math.min(planes.size(), MOST_PLANES));
    }

    private Plane plane(Gaps gaps, double heading_deg, double aside_mm) {
        return new Plane(heading_deg, aside_mm, new UprightPlane(cavity, carried, gaps, aside_mm, clearance_mm));
    }

    private double ahead(double heading_deg) {
        double heading = Math.toRadians(heading_deg);
        return goal.x_mm() * Math.cos(heading) + goal.y_mm() * Math.sin(heading);
    }

    private double aside(double heading_deg) {
        double heading = Math.toRadians(heading_deg);
        return goal.y_mm() * Math.cos(heading) - goal.x_mm() * Math.sin(heading);
    }

    private Optional<Motion> along(Plane plane) {
        List<Threading.Place> places = new Threading(plane.plane(), cavity, carried, clearance_mm)
                .find(ahead(plane.heading_deg()));
        if (places.isEmpty()) {
            return Optional.empty();
        }
        List<Pose> poses = new ArrayList<>(places.stream().map(plane::pose).toList());
        if (level) {
            double turned_deg = Math.IEEEremainder(goal.heading_deg() - plane.heading_deg(), 180);
            poses.add(new Pose(
                    goal.x_mm(), goal.y_mm(), goal.z_mm(), plane.heading_deg() + turned_deg, 0));
        }
        Motion motion = new Motion(poses);
        return DenseCheck.passes(cavity, carried, motion) ? Optional.of(motion) : Optional.empty();
    }

    private NoMotionFound miss() {
        HoleSearch hole = new HoleSearch(cavity.hole());
        Frontier frontier = Frontier.of(hole);
        return carried.boxes().stream()
                .map(box -> miss(hole, frontier, box))
                .min(Comparator.comparingDouble(NoMotionFound::air_mm))
                .orElseThrow();
    }

    /** The section with which the box goes in most easily. */
    private static NoMotionFound miss(HoleSearch hole, Frontier frontier, Box box) {
        List<Section> sections = List.of(
                new Section(box.width_mm(), box.height_mm()),
                new Section(box.length_mm(), box.height_mm()),
                new Section(box.length_mm(), box.width_mm()));
        return sections.stream()
                .map(section -> new NoMotionFound(
                        section,
                        MostAir.find(hole, frontier, section)
                                .map(MostAir::air_mm)
                                .orElse(-Math.min(section.width_mm(), section.thickness_mm()) / 2)))
                .max(Comparator.comparingDouble(NoMotionFound::air_mm))
                .orElseThrow();
    }
}
