package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.setup.CrossPoint;
import afterlength.craft.setup.SeatedString;
import afterlength.workshop.paper.Point;
import java.util.List;
import java.util.stream.IntStream;

/** The curves of one bridge laid out for drawing: origin on the belly under the centre line, heights over the belly. */
final class BridgeOutline {
    private static final int CURVE_POINTS = 121;
    private static final int LOOKS = 16;

    /** How far the crown is carried on beyond the outer strings, as a part of the distance between these. */
    private static final double BEYOND = 0.1;

    private final BridgeShape shape;
    private final List<Point> crown;

    BridgeOutline(BridgeShape shape) {
        this.shape = shape;
        this.crown = overBelly(shape.crownPoints(CURVE_POINTS));
    }

    double projection_mm() {
        return shape.inputs().projection_mm();
    }

    /** From the outer bass string to the outer treble string. */
    List<Point> crown() {
        return crown;
    }

    Point bassEnd() {
        return beyond(crown.get(1), crown.get(0));
    }

    Point trebleEnd() {
        return beyond(crown.get(crown.size() - 2), crown.get(crown.size() - 1));
    }

    List<Point> boardEnd() {
        return overBelly(shape.boardArcAtEnd(boardHalfWidth_mm(), CURVE_POINTS));
    }

    /** The board is wider than its strings by a little more than half their distance at its end. */
    double boardHalfWidth_mm() {
        double along = shape.inputs().board().length_mm() / shape.inputs().speakingLength_mm();
        double outer_mm = shape.strings().stream()
                .mapToDouble(string -> Math.abs(string.nutY().mm()
                        + along * (string.bridgeY().mm() - string.nutY().mm())))
                .max()
                .orElseThrow();
        return Math.min(outer_mm * 1.3, shape.inputs().board().radius_mm());
    }

    /** The highest place of the crown between two places across, looked for in small steps on the crown itself. */
    double highestBetween_mm(double from_mm, double to_mm) {
        double bass_mm = crown.get(0).x_mm();
        double treble_mm = crown.get(crown.size() - 1).x_mm();
        return IntStream.rangeClosed(0, LOOKS)
                .mapToDouble(i -> from_mm + (to_mm - from_mm) * i / LOOKS)
                .map(y_mm -> Math.min(treble_mm, Math.max(bass_mm, y_mm)))
                .map(y_mm -> projection_mm() + shape.crown().height_mm(y_mm))
                .max()
                .orElseThrow();
    }

    /** Middle of a string that lies in its groove. */
    Point stringCentre(int string) {
        SeatedString seated = shape.strings().get(string);
        double radius_mm = shape.inputs().strings().get(string).diameter_mm() / 2;
        return new Point(
                seated.bridgeY().mm(), projection_mm() + seated.underside().mm() + radius_mm);
    }

    private Point beyond(Point before, Point end) {
        double outer_mm = crown.get(0).distanceTo_mm(crown.get(crown.size() - 1));
        double part = BEYOND * outer_mm / before.distanceTo_mm(end);
        return end.moved(part * (end.x_mm() - before.x_mm()), part * (end.y_mm() - before.y_mm()));
    }

    private List<Point> overBelly(List<CrossPoint> points) {
        return points.stream()
                .map(point -> new Point(point.y_mm(), projection_mm() + point.z_mm()))
                .toList();
    }
}
