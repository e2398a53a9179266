package afterlength.craft.access;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The way in, within one upright plane: heights and tilts form a lattice, and at each crossing stand the spans that
 * {@link UprightPlane} allows. Neighbouring spans that overlap lead into each other. The search spreads from the level pose under
 * the plate until it comes outside; the way is then walked the other way round.
 *
 * <p>Between two crossings the spans bend by a few hundredths of a millimetre at most, which the clearance holds.
 */
final class Threading {
    private static final double MOST_TILT_DEG = 120;

    /** How close the crossings of the lattice lie: a wide way is found on the coarse one, a narrow one only on the fine one. */
    enum Lattice {
        COARSE(1, 4),
        FINE(0.25, 1);

        private final double height_mm;
        private final double tilt_deg;

        Lattice(double height_mm, double tilt_deg) {
            this.height_mm = height_mm;
            this.tilt_deg = tilt_deg;
        }
    }

    private record Node(int height, int tilt, Span span, int before) {}

    private final UprightPlane plane;
    private final Lattice lattice;
    private final double z_mm;
    private final int heights;
    private final List<Node> nodes = new ArrayList<>();
    private final Map<Integer, List<Span>> open = new HashMap<>();
    private final Deque<Integer> waiting = new ArrayDeque<>();

    Threading(UprightPlane plane, Cavity cavity, Carried carried, double clearance_mm, Lattice lattice) {
        this.plane = plane;
        this.lattice = lattice;
        z_mm = -cavity.plate_mm() - clearance_mm;
        heights = (int) Math.ceil((carried.reach_mm() + cavity.plate_mm() + cavity.depth_mm()) / lattice.height_mm) + 2;
    }

    /** A place on the way: along the plane, height, tilt. */
    record Place(double ahead_mm, double z_mm, double tilt_deg) {}

    /** From outside to level under the plate, there at the wanted place if it may stand there. */
    List<Place> find(double ahead_mm) {
        for (Span span : spans(0, 0)) {
            if (span.nearestTo(ahead_mm) == ahead_mm) {
                add(0, 0, span, -1);
            }
        }
        open.put(key(0, 0), new ArrayList<>());
        while (!waiting.isEmpty()) {
            int index = waiting.remove();
            Node node = nodes.get(index);
            if (plane.isOutside(z(node.height), tilt(node.tilt))) {
                return walked(index, ahead_mm);
            }
            spread(index, node);
        }
        return List.of();
    }

    private void spread(int index, Node node) {
        for (int height = node.height - 1; height <= node.height + 1; height++) {
            for (int tilt = node.tilt - 1; tilt <= node.tilt + 1; tilt++) {
                if (Math.abs(height) <= heights && Math.abs(tilt(tilt)) <= MOST_TILT_DEG) {
                    enter(height, tilt, node.span, index);
                }
            }
        }
    }

    private void enter(int height, int tilt, Span from, int before) {
        List<Span> notYet = open.computeIfAbsent(key(height, tilt), key -> new ArrayList<>(spans(height, tilt)));
        notYet.removeIf(span -> {
            boolean leads = !span.and(from).isEmpty();
            if (leads) {
                add(height, tilt, span, before);
            }
            return leads;
        });
    }

    private void add(int height, int tilt, Span span, int before) {
        nodes.add(new Node(height, tilt, span, before));
        waiting.add(nodes.size() - 1);
    }

    private static int key(int height, int tilt) {
        return height * 1000 + tilt;
    }

    private List<Span> spans(int height, int tilt) {
        return plane.spans(z(height), tilt(tilt));
    }

    private double z(int height) {
        return z_mm + height * lattice.height_mm;
    }

    private double tilt(int tilt) {
        return tilt * lattice.tilt_deg;
    }

    /** The chain leads from outside inwards, since every node names the one nearer to the cleat's place. */
    private List<Place> walked(int outside, double ahead_mm) {
        List<Place> places = new ArrayList<>();
        double at_mm = nodes.get(outside).span.middleOr(ahead_mm);
        for (int index = outside; index >= 0; index = nodes.get(index).before) {
            Node node = nodes.get(index);
            places.add(place(node, at_mm));
            Optional<Span> next = node.before < 0 ? Optional.empty() : Optional.of(nodes.get(node.before).span);
            double wanted_mm = at_mm;
            at_mm = next.map(node.span::and)
                    .map(both -> both.middleOr(wanted_mm))
                    .orElse(ahead_mm);
            places.add(place(node, at_mm));
        }
        return Collections.unmodifiableList(places);
    }

    private Place place(Node node, double at_mm) {
        return new Place(at_mm, z(node.height), tilt(node.tilt));
    }
}
