package afterlength.craft.setup;

import java.util.List;

/**
 * A maker's own template, read off as points from bass to treble in any place and turn. It is never stretched: it is turned and
 * shifted until it lies on the two outer wood points, which must fit on it.
 */
public record TemplateCrown(List<CrossPoint> points) implements Crown {
    public TemplateCrown {
        points = List.copyOf(points);
    }
}
