package afterlength.craft.colour;

import afterlength.craft.geometry.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Looks for a line in a picture where a person marked it, up to half a millimetre to either side, for nobody marks a mended line to a
 * tenth; and looks at untouched lines in just the same way, so that the search favours neither. Untouched lines are those given, or
 * else the same line moved 8, 11 and 14 mm to both sides. Of the moved ones, those that read more than thrice their middle one cross
 * an edge or a hole and are left out. Source: docs/sources.md#colour-study; half a millimetre and thrice are our own choice.
 */
public final class LineSearch {
    /** How far the untouched lines lie. Source: docs/sources.md#colour-study. */
    private static final double[] BESIDE_MM = {-14, -11, -8, 8, 11, 14};

    private static final double[] WITHIN_MM =
            IntStream.rangeClosed(-5, 5).mapToDouble(tenth -> tenth / 10.0).toArray();

    private static final double NEXT_MM = 0.1;
    private static final double CROSSES = 3;

    private final LinePieces pieces;
    private final double[] within_mm;

    private LineSearch(LinearPicture picture, double distance_mm, double[] within_mm) {
        if (picture.pixelsPerMm() < LineVisibility.COARSEST_PIXELS_PER_MM) {
            throw new IllegalArgumentException("the picture has " + picture.pixelsPerMm()
                    + " pixels to the millimetre; 10 or more are needed to see a line");
        }
        this.pieces = new LinePieces(EyeBlur.seen(picture, distance_mm));
        this.within_mm = within_mm;
    }

    /**
     * Reads a line that was marked by hand.
     *
     * @param line the places a person set, in millimetres; at least two, inside the picture
     * @param untouched lines on varnish that was not touched; none for those beside the line
     * @param distance_mm from the eye, usually 400
     * @return empty when the picture shows no untouched line that lies wholly in it
     */
    public static Optional<LineVisibility> near(
            LinearPicture picture, List<Point> line, List<List<Point>> untouched, double distance_mm) {
        return new LineSearch(picture, distance_mm, WITHIN_MM).find(line, untouched);
    }

    /** The same exactly on the line, for a picture in which its place is known. */
    public static Optional<LineVisibility> on(LinearPicture picture, List<Point> line, double distance_mm) {
        return new LineSearch(picture, distance_mm, new double[] {0}).find(line, List.of());
    }

    /** The lines in untouched varnish that a line is compared with when no others are given, some perhaps outside a picture. */
    public static List<List<Point>> beside(List<Point> line) {
        return DoubleStream.of(BESIDE_MM)
                .mapToObj(shift -> LinePieces.moved(line, shift))
                .toList();
    }

    private Optional<LineVisibility> find(List<Point> line, List<List<Point>> untouched) {
        double[] controls = (untouched.isEmpty() ? beside(line) : untouched)
                .stream().filter(pieces::hold).mapToDouble(this::high).sorted().toArray();
        if (controls.length == 0) {
            return Optional.empty();
        }
        double control = untouched.isEmpty() ? highestThatCrossesNothing(controls) : controls[controls.length - 1];
        double shift_mm = shift(line);
        List<Point> found = LinePieces.moved(line, shift_mm);
        double high = high(found, 0);
        double next = (high(found, -NEXT_MM) + high(found, NEXT_MM)) / 2;
        return Optional.of(
                LineVisibility.of(pieces.differences(found), control, Math.max(0, high - next), across(found)));
    }

    private double high(List<Point> line) {
        return Arrays.stream(within_mm).map(shift -> high(line, shift)).max().orElseThrow();
    }

    private double high(List<Point> line, double shift_mm) {
        return LineVisibility.percentile95(pieces.differences(LinePieces.moved(line, shift_mm)));
    }

    private double shift(List<Point> line) {
        double best_mm = 0;
        for (double shift_mm : within_mm) {
            best_mm = high(line, shift_mm) > high(line, best_mm) ? shift_mm : best_mm;
        }
        return best_mm;
    }

    private static double highestThatCrossesNothing(double[] sorted) {
        double middle = sorted[sorted.length / 2];
        return Arrays.stream(sorted)
                .filter(one -> one <= CROSSES * middle)
                .max()
                .orElse(middle);
    }

    private List<Double> across(List<Point> line) {
        List<Double> across = new ArrayList<>();
        int steps = (int) Math.round(LineVisibility.FARTHEST_MM / LineVisibility.STEP_MM);
        for (int step = -steps; step <= steps; step++) {
            across.add(pieces.beside(line, step * LineVisibility.STEP_MM));
        }
        return across;
    }
}
