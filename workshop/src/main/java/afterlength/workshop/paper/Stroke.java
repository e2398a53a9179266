package afterlength.workshop.paper;

import java.util.List;

/**
 * How a line is drawn.
 *
 * @param width_mm breadth of the line
 * @param dash_mm lengths drawn and left out in turn; empty for an unbroken line
 */
public record Stroke(Ink ink, double width_mm, List<Double> dash_mm) {
    public Stroke {
        if (!(width_mm > 0 && width_mm <= 10)) {
            throw new IllegalArgumentException(
                    "a line " + width_mm + " mm broad cannot be drawn; give a breadth over 0 up to 10 mm");
        }
        dash_mm = List.copyOf(dash_mm);
        if (!dash_mm.stream().allMatch(length -> length > 0)) {
            throw new IllegalArgumentException("dashes of " + dash_mm + " mm cannot be drawn; give lengths over 0 mm");
        }
    }

    public static Stroke of(Ink ink, double width_mm) {
        return new Stroke(ink, width_mm, List.of());
    }

    public static Stroke dashed(Ink ink, double width_mm, double drawn_mm, double leftOut_mm) {
        return new Stroke(ink, width_mm, List.of(drawn_mm, leftOut_mm));
    }

    /** The long-and-short line that marks a centre. */
    public static Stroke centreLine(Ink ink, double width_mm) {
        return new Stroke(ink, width_mm, List.of(4.0, 0.8, 0.8, 0.8));
    }
}
