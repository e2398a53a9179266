package afterlength.craft.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * Draws a curve as a hand would: put the pen down, go on, lift it. Directions are in degrees on the drawing: 0 to the treble
 * side, 90 down the instrument. The two reaches say how long the pen keeps its direction, as a share of the distance covered;
 * 0.39 at both ends of a quarter turn is a circle.
 */
public final class CurvePen {
    /** Reach that makes a quarter circle: 4/3 · tan(90°/4) / √2. */
    static final double QUARTER = 0.3905;

    private final List<Cubic> parts = new ArrayList<>();
    private Point place;
    private double direction_deg;

    private CurvePen(Point start, double direction_deg) {
        this.place = start;
        this.direction_deg = direction_deg;
    }

    public static CurvePen at(Point start, double direction_deg) {
        return new CurvePen(start, direction_deg);
    }

    /** Takes a new direction on the spot: a corner. */
    public CurvePen turn(double newDirection_deg) {
        direction_deg = newDirection_deg;
        return this;
    }

    public CurvePen lineTo(Point next) {
        parts.add(Cubic.line(place, next));
        direction_deg = Math.toDegrees(Math.atan2(next.y_mm() - place.y_mm(), next.x_mm() - place.x_mm()));
        place = next;
        return this;
    }

    public CurvePen curveTo(Point next, double arrivingDirection_deg) {
        return curveTo(next, arrivingDirection_deg, QUARTER, QUARTER);
    }

    public CurvePen curveTo(Point next, double arrivingDirection_deg, double reachOut, double reachIn) {
        double distance_mm = place.distanceTo_mm(next);
        Point leaving = ahead(place, direction_deg, distance_mm * reachOut);
        Point arriving = ahead(next, arrivingDirection_deg, -distance_mm * reachIn);
        parts.add(new Cubic(place, leaving, arriving, next));
        place = next;
        direction_deg = arrivingDirection_deg;
        return this;
    }

    /** Part of a circle round a centre, turning by the given angle; positive turns run from treble side downwards. */
    public CurvePen arcAround(Point centre, double turn_deg) {
        double radius_mm = centre.distanceTo_mm(place);
        double start_deg = Math.toDegrees(Math.atan2(place.y_mm() - centre.y_mm(), place.x_mm() - centre.x_mm()));
        int pieces = (int) Math.ceil(Math.abs(turn_deg) / 90);
        for (int i = 1; i <= pieces; i++) {
            arcPiece(centre, radius_mm, start_deg + turn_deg * (i - 1) / pieces, turn_deg / pieces);
        }
        return this;
    }

    private void arcPiece(Point centre, double radius_mm, double from_deg, double turn_deg) {
        double sideways_deg = Math.copySign(90, turn_deg);
        double handle_mm = radius_mm * 4 / 3 * Math.tan(Math.toRadians(Math.abs(turn_deg)) / 4);
        Point next = ahead(centre, from_deg + turn_deg, radius_mm);
        Point leaving = ahead(place, from_deg + sideways_deg, handle_mm);
        direction_deg = from_deg + turn_deg + sideways_deg;
        parts.add(new Cubic(place, leaving, ahead(next, direction_deg, -handle_mm), next));
        place = next;
    }

    public Curve lift() {
        return new Curve(parts);
    }

    private static Point ahead(Point from, double direction_deg, double way_mm) {
        double direction = Math.toRadians(direction_deg);
        return from.plus(way_mm * Math.cos(direction), way_mm * Math.sin(direction));
    }
}
