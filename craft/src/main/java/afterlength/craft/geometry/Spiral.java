package afterlength.craft.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A logarithmic spiral winding inwards, the side of a scroll: the radius shrinks by the same ratio in equal turns,
 * {@code r = r0 · (r1/r0)^(turned/total)}. Drawn as cubics of 30°, whose handles follow the spiral's own direction.
 */
final class Spiral {
    private static final double PIECE_DEG = 30;

    private final Point centre;
    private final double outer_mm;
    private final double inner_mm;
    private final double start_deg;
    private final double turn_deg;

    /** Positive turns run from the treble side downwards. */
    Spiral(Point centre, double outer_mm, double inner_mm, double start_deg, double turn_deg) {
        this.centre = centre;
        this.outer_mm = outer_mm;
        this.inner_mm = inner_mm;
        this.start_deg = start_deg;
        this.turn_deg = turn_deg;
    }

    Curve whole() {
        return part(0, 1);
    }

    /** The piece between two shares of the whole turn. */
    Curve part(double fromShare, double toShare) {
        int pieces = (int) Math.ceil((toShare - fromShare) * Math.abs(turn_deg) / PIECE_DEG);
        List<Cubic> parts = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            double from = fromShare + (toShare - fromShare) * i / pieces;
            double to = fromShare + (toShare - fromShare) * (i + 1) / pieces;
            parts.add(piece(from, to));
        }
        return new Curve(parts);
    }

    Point at(double share) {
        double angle = angle(share);
        return centre.plus(radius_mm(share) * Math.cos(angle), radius_mm(share) * Math.sin(angle));
    }

    /** The direction in which the spiral runs, in degrees. */
    double direction_deg(double share) {
        Point here = at(share);
        Point ahead = along(here, share, 1e-3);
        return Math.toDegrees(Math.atan2(ahead.y_mm() - here.y_mm(), ahead.x_mm() - here.x_mm()));
    }

    /** Share of a full turn from the spiral's beginning to the direction of a place, 0 to 1. */
    double wayRound(Point place) {
        double angle_deg = Math.toDegrees(Math.atan2(place.y_mm() - centre.y_mm(), place.x_mm() - centre.x_mm()));
        double turned = (angle_deg - start_deg) * Math.signum(turn_deg) / 360;
        return turned - Math.floor(turned);
    }

    /** Turns of the spiral between its outermost edge and a place, both seen in the same direction from the centre. */
    double turnsFromEdge(Point place) {
        double share = Math.log(Math.max(centre.distanceTo_mm(place), inner_mm * 0.2) / outer_mm)
                / Math.log(inner_mm / outer_mm);
        return share * Math.abs(turn_deg) / 360 - wayRound(place);
    }

    /** Hermite piece: the handles are a third of the derivative along the share. */
    private Cubic piece(double from, double to) {
        double third = (to - from) / 3;
        Point start = at(from);
        Point end = at(to);
        return new Cubic(start, along(start, from, third), along(end, to, -third), end);
    }

    private Point along(Point place, double share, double step) {
        double shrink = Math.log(inner_mm / outer_mm);
        double turn = Math.toRadians(turn_deg);
        double angle = angle(share);
        double deltaX_mm = radius_mm(share) * (shrink * Math.cos(angle) - turn * Math.sin(angle));
        double deltaY_mm = radius_mm(share) * (shrink * Math.sin(angle) + turn * Math.cos(angle));
        return place.plus(deltaX_mm * step, deltaY_mm * step);
    }

    private double angle(double share) {
        return Math.toRadians(start_deg + turn_deg * share);
    }

    private double radius_mm(double share) {
        return outer_mm * Math.pow(inner_mm / outer_mm, share);
    }
}
