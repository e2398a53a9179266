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

    /** Whether it can be a crown: drawn along an edge, with a hollow or a height to it. */
    public boolean isCrown() {
        return tool == MarkTool.SEAM && places.size() > 2;
    }

    /** The crown that was traced, one point a line, as the set-up reads it. */
    public String crown() {
        return CrownPoints.text(places);
    }

    public boolean isLine() {
        return tool == MarkTool.CRACK || tool == MarkTool.SEAM;
    }
}
