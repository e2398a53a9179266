package afterlength.workshop.paper;

import java.util.List;
import java.util.stream.Stream;

/**
 * One line of words on a drawing. The point is on the baseline.
 *
 * @param size_mm size of the letters, from one line to the next when set solid; capitals are 0.70 of it
 * @param turn_deg anticlockwise about the point
 */
public record Words(String words, Point at, double size_mm, Anchor anchor, double turn_deg, Face face, Ink ink)
        implements Shape {
    /** Height of capitals and figures, from the face's own table (698 of 1000). */
    static final double CAPITAL_HEIGHT = 0.698;

    private static final double DESCENT = 0.22;

    public Words {
        if (!(size_mm >= 1)) {
            throw new IllegalArgumentException(
                    "the words '" + words + "' at " + size_mm + " mm cannot be read; give a size of 1 mm or more");
        }
    }

    public double width_mm() {
        return Lettering.width_mm(face, words, size_mm);
    }

    @Override
    public Bounds bounds() {
        double left_mm = -width_mm() * anchor.partBefore();
        double right_mm = left_mm + width_mm();
        double down_mm = -DESCENT * size_mm;
        double up_mm = CAPITAL_HEIGHT * size_mm;
        List<Point> corners = Stream.of(
                        new Point(left_mm, down_mm),
                        new Point(right_mm, down_mm),
                        new Point(right_mm, up_mm),
                        new Point(left_mm, up_mm))
                .map(corner -> corner.turned(turn_deg).moved(at.x_mm(), at.y_mm()))
                .toList();
        return Bounds.around(corners);
    }

    @Override
    public Words moved(double right_mm, double up_mm) {
        return new Words(words, at.moved(right_mm, up_mm), size_mm, anchor, turn_deg, face, ink);
    }
}
