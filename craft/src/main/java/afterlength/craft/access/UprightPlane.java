package afterlength.craft.access;

import java.util.ArrayList;
import java.util.List;

/**
 * Where the carried thing may be while its middle stays in one upright plane along its heading. At a height and a tilt it may stand in
 * some spans along the plane and nowhere else: the part of each box that lies within the plate must lie over one opening of the
 * hole, with the working clearance ahead, behind and on both sides, and nothing may touch the floor.
 */
final class UprightPlane {
    private final Cavity cavity;
    private final double clearance_mm;
    private final List<Box> boxes;
    private final List<List<Span>> gaps = new ArrayList<>();

    UprightPlane(Cavity cavity, Carried carried, Gaps hole, double aside_mm, double clearance_mm) {
        this.cavity = cavity;
        this.clearance_mm = clearance_mm;
        boxes = carried.boxes();
        for (Box box : boxes) {
            gaps.add(hole.between(aside_mm + box.left_mm() - clearance_mm, aside_mm + box.right_mm() + clearance_mm));
        }
    }

    /** The spans in which the middle may stand, from behind to ahead. */
    List<Span> spans(double z_mm, double tilt_deg) {
        double cosine = Math.cos(Math.toRadians(tilt_deg));
        double sine = Math.sin(Math.toRadians(tilt_deg));
        List<Span> spans = List.of(Span.EVERYWHERE);
        for (int i = 0; i < boxes.size() && !spans.isEmpty(); i++) {
            Profile profile = new Profile(boxes.get(i), z_mm, cosine, sine);
            if (profile.lowest() < cavity.floor_mm() + clearance_mm) {
                return List.of();
            }
            Span taken = profile.within(-cavity.plate_mm() - clearance_mm / 2, clearance_mm / 2);
            if (!taken.isEmpty()) {
                spans = intersection(spans, allowed(taken, gaps.get(i)));
            }
        }
        return spans;
    }

    /** Whether nothing of it is in the hole or below any more. */
    boolean isOutside(double z_mm, double tilt_deg) {
        double cosine = Math.cos(Math.toRadians(tilt_deg));
        double sine = Math.sin(Math.toRadians(tilt_deg));
        return boxes.stream().allMatch(box -> new Profile(box, z_mm, cosine, sine).lowest() > clearance_mm / 2);
    }

    /** How much wider the widest opening is than the thinner side of the box that goes through it with the least room. */
    double room_mm() {
        double room_mm = Double.POSITIVE_INFINITY;
        for (int i = 0; i < boxes.size(); i++) {
            double widest_mm = gaps.get(i).stream()
                    .mapToDouble(gap -> gap.high() - gap.low())
                    .max()
                    .orElse(0);
            double thinner_mm = Math.min(boxes.get(i).length_mm(), boxes.get(i).height_mm());
            room_mm = Math.min(room_mm, widest_mm - 2 * clearance_mm - thinner_mm);
        }
        return room_mm;
    }

    private List<Span> allowed(Span taken, List<Span> openings) {
        List<Span> allowed = new ArrayList<>();
        for (Span opening : openings) {
            Span span =
                    new Span(opening.low() + clearance_mm - taken.low(), opening.high() - clearance_mm - taken.high());
            if (!span.isEmpty()) {
                allowed.add(span);
            }
        }
        return allowed;
    }

    private static List<Span> intersection(List<Span> ones, List<Span> others) {
        List<Span> both = new ArrayList<>();
        for (Span one : ones) {
            for (Span other : others) {
                Span common = one.and(other);
                if (!common.isEmpty()) {
                    both.add(common);
                }
            }
        }
        return both;
    }

    /** The outline of a tilted box, seen from the side. */
    private static final class Profile {
        private final double[] ahead = new double[4];
        private final double[] height = new double[4];

        Profile(Box box, double z_mm, double cosine, double sine) {
            for (int i = 0; i < 4; i++) {
                double along = i == 0 || i == 3 ? box.from_mm() : box.to_mm();
                double up = i < 2 ? box.bottom_mm() : box.top_mm();
                ahead[i] = along * cosine - up * sine;
                height[i] = z_mm + along * sine + up * cosine;
            }
        }

        double lowest() {
            return Math.min(Math.min(height[0], height[1]), Math.min(height[2], height[3]));
        }

        /** What of it lies between two heights, as a span ahead. */
        Span within(double bottom, double top) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = 0, before = 3; i < 4; before = i++) {
                double rise = height[i] - height[before];
                double from = share(rise > 0 ? bottom : top, before, rise, 0);
                double to = share(rise > 0 ? top : bottom, before, rise, 1);
                boolean level = rise == 0 && (height[i] < bottom || height[i] > top);
                if (from <= to && !level) {
                    double run = ahead[i] - ahead[before];
                    low = Math.min(low, ahead[before] + Math.min(from * run, to * run));
                    high = Math.max(high, ahead[before] + Math.max(from * run, to * run));
                }
            }
            return new Span(low, high);
        }

        private double share(double level, int from, double rise, double otherwise) {
            if (rise == 0) {
                return otherwise;
            }
            double share = (level - height[from]) / rise;
            return otherwise == 0 ? Math.max(0, share) : Math.min(1, share);
        }
    }
}
