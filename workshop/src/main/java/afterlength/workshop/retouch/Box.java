package afterlength.workshop.retouch;

import afterlength.craft.geometry.Point;
import java.util.List;
import java.util.Optional;

/** An upright rectangle on the instrument that a photograph shows wholly. */
record Box(Point corner, Point opposite) {
    private static final double STEP_MM = 0.5;
    private static final int SIDES = 4;

    /**
     * The rectangle around some lines with as much to every side as is wanted, or as the photograph shows; empty when it does not
     * show even the least.
     */
    static Optional<Box> around(List<List<Point>> lines, double wanted_mm, double least_mm, LinePicture picture) {
        double[] margins = {wanted_mm, wanted_mm, wanted_mm, wanted_mm};
        Box tight = tight(lines);
        while (true) {
            Box box = tight.with(margins);
            int side = firstOutside(box, picture);
            if (side < 0) {
                return Optional.of(box);
            }
            margins[side] -= STEP_MM;
            if (margins[side] < least_mm) {
                return Optional.empty();
            }
        }
    }

    private static Box tight(List<List<Point>> lines) {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (List<Point> line : lines) {
            for (Point place : line) {
                left = Math.min(left, place.x_mm());
                right = Math.max(right, place.x_mm());
                top = Math.min(top, place.y_mm());
                bottom = Math.max(bottom, place.y_mm());
            }
        }
        return new Box(Point.of(left, top), Point.of(right, bottom));
    }

    private Box with(double[] margins) {
        return new Box(corner.plus(-margins[0], -margins[1]), opposite.plus(margins[2], margins[3]));
    }

    /** The side that reaches farthest out of the picture, or −1: its middle decides, and its corners where no middle does. */
    private static int firstOutside(Box box, LinePicture picture) {
        for (double along : new double[] {0.5, 0.25, 0.75, 0, 1}) {
            for (int side = 0; side < SIDES; side++) {
                if (!picture.shows(box.onSide(side, along))) {
                    return side;
                }
            }
        }
        return -1;
    }

    private Point onSide(int side, double along) {
        double x_mm = corner.x_mm() + along * width_mm();
        double y_mm = corner.y_mm() + along * height_mm();
        return switch (side) {
            case 0 -> Point.of(corner.x_mm(), y_mm);
            case 1 -> Point.of(x_mm, corner.y_mm());
            case 2 -> Point.of(opposite.x_mm(), y_mm);
            default -> Point.of(x_mm, opposite.y_mm());
        };
    }

    private double width_mm() {
        return opposite.x_mm() - corner.x_mm();
    }

    private double height_mm() {
        return opposite.y_mm() - corner.y_mm();
    }

    double area_mm2() {
        return width_mm() * height_mm();
    }

    boolean holds(List<Point> line) {
        return line.stream()
                .allMatch(place -> place.x_mm() >= corner.x_mm()
                        && place.x_mm() <= opposite.x_mm()
                        && place.y_mm() >= corner.y_mm()
                        && place.y_mm() <= opposite.y_mm());
    }

    /** Places counted from the corner. */
    List<Point> within(List<Point> line) {
        return line.stream()
                .map(place -> place.plus(-corner.x_mm(), -corner.y_mm()))
                .toList();
    }
}
