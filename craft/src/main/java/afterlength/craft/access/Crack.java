package afterlength.craft.access;

import afterlength.craft.geometry.Point;
import java.util.List;

/** The line of a crack as it was traced, from one end to the other. */
public record Crack(List<Point> points) {
    public Crack {
        points = List.copyOf(points);
        if (points.size() < 2 || length_mm(points) <= 0) {
            throw new IllegalArgumentException(
                    "crack has " + points.size() + " points and no length; trace two ends at least");
        }
    }

    public double length_mm() {
        return length_mm(points);
    }

    private static double length_mm(List<Point> points) {
        double length_mm = 0;
        for (int i = 1; i < points.size(); i++) {
            length_mm += points.get(i - 1).distanceTo_mm(points.get(i));
        }
        return length_mm;
    }

    /** The place so far from its beginning. */
    public Point at(double along_mm) {
        int piece = piece(along_mm);
        double share = (along_mm - before_mm(piece)) / piece_mm(piece);
        return points.get(piece).towards(points.get(piece + 1), share);
    }

    /** Its direction there, from the x axis towards the y axis. */
    public double direction_deg(double along_mm) {
        Point from = points.get(piece(along_mm));
        Point to = points.get(piece(along_mm) + 1);
        return Math.toDegrees(Math.atan2(to.y_mm() - from.y_mm(), to.x_mm() - from.x_mm()));
    }

    private int piece(double along_mm) {
        int piece = 0;
        while (piece < points.size() - 2 && before_mm(piece + 1) <= along_mm) {
            piece++;
        }
        return piece;
    }

    private double before_mm(int piece) {
        return piece == 0 ? 0 : length_mm(points.subList(0, piece + 1));
    }

    private double piece_mm(int piece) {
        return points.get(piece).distanceTo_mm(points.get(piece + 1));
    }
}
