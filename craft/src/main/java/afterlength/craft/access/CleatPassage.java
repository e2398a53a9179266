package afterlength.craft.access;

import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A way for a cleat, alone or on the jaw of a clamp, from outside through the sound-hole to its place under the crack.
 *
 * <p>The way is looked for in upright planes: the thing keeps its heading, tilts, sinks and shifts until it lies level under the plate
 * ({@link Threading}). Then it is carried to its place under the plate: a cleat alone straight, a thing with a post with its post in
 * the hole ({@link PostSlide}). Planes with most room are tried first. Every way is checked a second time by {@link DenseCheck}; a
 * way that does not hold there is not shown.
 *
 * <p>Left out: rolling about the arm, bending, and whatever stands inside but the back. So a way found may still meet the post or a
 * lining, and none found is no proof.
 */
public final class CleatPassage {
    private static final double HEADING_STEP_DEG = 5;
    private static final double ASIDE_STEP_MM = 1;
    /** So many planes, those with most room first, keep the search within seconds. */
    private static final int MOST_PLANES = 40;
    /** The fine search of one plane takes as long as the coarse one of sixteen. */
    private static final int MOST_FINE_PLANES = 10;
    /** Laying out the planes is about so much of the work. */
    private static final double LAYING_SHARE = 0.3;

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

    /** A plane to come in by, the place along it to come to, and the poses from there to the goal. */
    private record Plane(double heading_deg, double aside_mm, UprightPlane plane, double ahead_mm, List<Pose> onward) {
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
        Laying laying = new Laying(share -> watch.goesOn(LAYING_SHARE * share));
        List<Plane> planes = level ? planesOverHole(laying) : planesWithPostInHole(laying);
        return laying.isStopped() ? new MotionStopped() : search(roomiest(planes), watch);
    }

    private MotionAnswer search(List<Plane> planes, Watch watch) {
        int fine = Math.min(planes.size(), MOST_FINE_PLANES);
        for (int i = 0; i < planes.size() + fine; i++) {
            if (!watch.goesOn(LAYING_SHARE + (1 - LAYING_SHARE) * i / (planes.size() + fine))) {
                return new MotionStopped();
            }
            Optional<Motion> motion = i < planes.size()
                    ? along(planes.get(i), Threading.Lattice.COARSE)
                    : along(planes.get(i - planes.size()), Threading.Lattice.FINE);
            if (motion.isPresent()) {
                return motion.get();
            }
        }
        return miss();
    }

    private static List<Plane> roomiest(List<Plane> planes) {
        planes.removeIf(plane -> plane.room_mm() < 0);
        planes.sort(Comparator.comparingDouble(Plane::room_mm).reversed());
        return planes.subList(0, Math.min(planes.size(), MOST_PLANES));
    }

    private List<Plane> planesOverHole(Laying laying) {
        List<Plane> planes = new ArrayList<>();
        for (double heading_deg = 0;
                heading_deg < 360 && laying.goesOn(heading_deg / 360);
                heading_deg += HEADING_STEP_DEG) {
            Gaps gaps = Gaps.along(cavity.hole(), heading_deg);
            double turned_deg = Math.IEEEremainder(goal.heading_deg() - heading_deg, 180);
            Pose end = new Pose(goal.x_mm(), goal.y_mm(), goal.z_mm(), heading_deg + turned_deg, 0);
            for (double aside_mm = gaps.rightmost_mm(); aside_mm < gaps.leftmost_mm(); aside_mm += ASIDE_STEP_MM) {
                planes.add(plane(gaps, heading_deg, aside_mm, gaps.middle_mm(), List.of(end)));
            }
        }
        return planes;
    }

    /** One plane for every heading and every millimetre aside; of the poses in it the one nearest to the goal. */
    private List<Plane> planesWithPostInHole(Laying laying) {
        List<PostSlide.Place> places = PostSlide.list(cavity, carried, goal, clearance_mm, laying);
        Map<Double, Gaps> gaps = new HashMap<>();
        Map<List<Long>, Plane> planes = new LinkedHashMap<>();
        for (int i = 0; i < places.size() && laying.goesOn((double) i / places.size()); i++) {
            PostSlide.Place place = places.get(i);
            Pose pose = place.pose();
            double heading = Math.toRadians(pose.heading_deg());
            double ahead_mm = pose.x_mm() * Math.cos(heading) + pose.y_mm() * Math.sin(heading);
            double aside_mm = pose.y_mm() * Math.cos(heading) - pose.x_mm() * Math.sin(heading);
            List<Long> about =
                    List.of(Math.floorMod(Math.round(pose.heading_deg()), 360L), Math.round(aside_mm / ASIDE_STEP_MM));
            if (!planes.containsKey(about)) {
                Gaps along =
                        gaps.computeIfAbsent(pose.heading_deg(), heading_deg -> Gaps.along(cavity.hole(), heading_deg));
                planes.put(about, plane(along, pose.heading_deg(), aside_mm, ahead_mm, onward(places, place)));
            }
        }
        return new ArrayList<>(planes.values());
    }

    private static List<Pose> onward(List<PostSlide.Place> places, PostSlide.Place from) {
        List<Pose> onward = new ArrayList<>();
        for (int index = from.before(); index >= 0; index = places.get(index).before()) {
            onward.add(places.get(index).pose());
        }
        return onward;
    }

    private Plane plane(Gaps gaps, double heading_deg, double aside_mm, double ahead_mm, List<Pose> onward) {
        UprightPlane plane = new UprightPlane(cavity, carried, gaps, aside_mm, clearance_mm);
        return new Plane(heading_deg, aside_mm, plane, ahead_mm, onward);
    }

    private Optional<Motion> along(Plane plane, Threading.Lattice lattice) {
        List<Threading.Place> places =
                new Threading(plane.plane(), cavity, carried, clearance_mm, lattice).find(plane.ahead_mm());
        if (places.isEmpty()) {
            return Optional.empty();
        }
        List<Pose> poses = new ArrayList<>(places.stream().map(plane::pose).toList());
        poses.addAll(plane.onward());
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
