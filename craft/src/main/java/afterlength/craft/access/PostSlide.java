package afterlength.craft.access;

import afterlength.craft.geometry.Point;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * Where a clamp that lies level under the plate can be brought from, while its post stands in the hole: the middle of the post moves
 * over a lattice of places and the whole turns by steps about it. Under the plate nothing is in the way.
 */
final class PostSlide {
    private static final double STEP_MM = 0.75;
    static final double TURN_STEP_DEG = 5;
    private static final int TURNS = (int) (360 / TURN_STEP_DEG);
    private static final GeometryFactory PLANE = new GeometryFactory();

    /** The pose, and the number of the one that is nearer to the goal, below zero for the goal itself. */
    record Place(Pose pose, int before) {}

    private record Lattice(int x, int y, int turn) {}

    private final PreparedGeometry hole;
    private final List<Box> posts;
    private final double middle_mm;
    private final Pose goal;
    private final double clearance_mm;
    private final List<Place> places = new ArrayList<>();
    private final Map<Lattice, Boolean> seen = new HashMap<>();
    private final Deque<Integer> waiting = new ArrayDeque<>();
    private final List<Lattice> lattices = new ArrayList<>();

    private PostSlide(Cavity cavity, Carried carried, Pose goal, double clearance_mm) {
        hole = PreparedGeometryFactory.prepare(polygon(cavity.hole().points()));
        posts = carried.boxes().stream().filter(box -> box.top_mm() > 0).toList();
        middle_mm = posts.stream()
                .mapToDouble(box -> (box.from_mm() + box.to_mm()) / 2)
                .average()
                .orElse(0);
        this.goal = goal;
        this.clearance_mm = clearance_mm;
    }

    /** All level poses from which the goal is reached, the nearest first; none when the post cannot stand in the hole at the goal. */
    static List<Place> list(Cavity cavity, Carried carried, Pose goal, double clearance_mm, Laying laying) {
        PostSlide slide = new PostSlide(cavity, carried, goal, clearance_mm);
        slide.begin();
        slide.spread(laying);
        return slide.places;
    }

    private void begin() {
        for (int turn = 0; turn < TURNS; turn++) {
            double heading_deg = turn * TURN_STEP_DEG;
            Pose pose = new Pose(goal.x_mm(), goal.y_mm(), goal.z_mm(), heading_deg, 0);
            if (fits(pose)) {
                double[] post = pose.place(middle_mm, 0, 0);
                add(
                        pose,
                        new Lattice((int) Math.round(post[0] / STEP_MM), (int) Math.round(post[1] / STEP_MM), turn),
                        -1);
            }
        }
    }

    /** How many places there are is not known before; so the share stays at nothing. */
    private void spread(Laying laying) {
        while (!waiting.isEmpty() && laying.goesOn(0)) {
            int index = waiting.remove();
            Lattice here = lattices.get(index);
            for (int x = -1; x <= 1; x++) {
                for (int y = -1; y <= 1; y++) {
                    enter(new Lattice(here.x + x, here.y + y, here.turn), index);
                }
            }
            enter(new Lattice(here.x, here.y, (here.turn + 1) % TURNS), index);
            enter(new Lattice(here.x, here.y, (here.turn + TURNS - 1) % TURNS), index);
        }
    }

    private void enter(Lattice lattice, int before) {
        if (seen.putIfAbsent(lattice, true) == null) {
            Pose pose = pose(lattice, places.get(before).pose.heading_deg());
            if (fits(pose)) {
                add(pose, lattice, before);
            }
        }
    }

    private void add(Pose pose, Lattice lattice, int before) {
        places.add(new Place(pose, before));
        lattices.add(lattice);
        waiting.add(places.size() - 1);
    }

    /** The heading goes on from the one before, so that a step over north is no whole turn. */
    private Pose pose(Lattice lattice, double headingBefore_deg) {
        double change_deg = Math.IEEEremainder(lattice.turn * TURN_STEP_DEG - headingBefore_deg, 360);
        double heading_deg = headingBefore_deg + change_deg;
        double heading = Math.toRadians(heading_deg);
        return new Pose(
                lattice.x * STEP_MM - middle_mm * Math.cos(heading),
                lattice.y * STEP_MM - middle_mm * Math.sin(heading),
                goal.z_mm(),
                heading_deg,
                0);
    }

    private boolean fits(Pose pose) {
        return posts.stream().allMatch(post -> hole.containsProperly(polygon(corners(post, pose))));
    }

    private List<Point> corners(Box post, Pose pose) {
        double from_mm = post.from_mm() - clearance_mm;
        double to_mm = post.to_mm() + clearance_mm;
        double right_mm = post.left_mm() - clearance_mm;
        double left_mm = post.right_mm() + clearance_mm;
        return List.of(
                corner(pose, from_mm, right_mm),
                corner(pose, to_mm, right_mm),
                corner(pose, to_mm, left_mm),
                corner(pose, from_mm, left_mm));
    }

    private static Point corner(Pose pose, double along_mm, double across_mm) {
        double[] place = pose.place(along_mm, across_mm, 0);
        return Point.of(place[0], place[1]);
    }

    private static Polygon polygon(List<Point> points) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point point = points.get(i % points.size());
            ring[i] = new Coordinate(point.x_mm(), point.y_mm());
        }
        return PLANE.createPolygon(ring);
    }
}
