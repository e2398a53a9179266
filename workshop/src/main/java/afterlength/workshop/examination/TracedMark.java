package afterlength.workshop.examination;

import afterlength.craft.geometry.Point;
import java.util.List;

/**
 * A mark in millimetres on the axes of the card that lies in its photograph, x right, y down; so two marks of one photograph share their
 * axes, and marks of two do not.
 *
 * @param height_mm over the card, at which it was read
 */
public record TracedMark(
        long id, MarkTool tool, Photograph photograph, String words, double height_mm, List<Point> places) {
    public TracedMark {
        places = List.copyOf(places);
    }

    public boolean isOutline() {
        return tool == MarkTool.OUTLINE;
    }

    public boolean isLine() {
        return tool == MarkTool.CRACK || tool == MarkTool.SEAM;
    }
}
