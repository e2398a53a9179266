package afterlength.craft.access;

import afterlength.craft.geometry.Point;
import java.util.Optional;

/** The hole turned back by an angle, so that a bar at that angle lies level. */
final class TurnedHole {
    /** A bar just as long as the hole is not turned away for the last figure of a sine. */
    private static final double ROUNDING_MM = 1e-9;

    private final double turn;
    private final Strip[] strips;

    TurnedHole(double[] x, double[] y, double turn) {
        this.turn = turn;
        double cosine = Math.cos(turn);
        double sine = Math.sin(turn);
        double[] turnedX = new double[x.length];
        double[] turnedY = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            turnedX[i] = cosine * x[i] + sine * y[i];
            turnedY[i] = cosine * y[i] - sine * x[i];
        }
        strips = Strips.of(turnedX, turnedY);
    }

    double turn() {
        return turn;
    }

    LevelBar thickest(double width, double floor) {
        return LevelBar.thickest(strips, width - ROUNDING_MM, floor);
    }

    /** The thickest section of a width at this turn. */
    Optional<PlacedSection> findThickest(double width) {
        LevelBar bar = thickest(width, 0);
        return bar.isFound() ? Optional.of(placed(bar, width)) : Optional.empty();
    }

    /** A found bar as it lies in the hole that was not turned. */
    PlacedSection placed(LevelBar bar, double width) {
        double level = bar.x() + width / 2;
        Point centre = Point.of(
                level * Math.cos(turn) - bar.y() * Math.sin(turn), level * Math.sin(turn) + bar.y() * Math.cos(turn));
        double halfTurn_deg = ((Math.toDegrees(turn) % 180) + 180) % 180;
        return new PlacedSection(new Section(width, bar.thickness()), centre, halfTurn_deg);
    }
}
