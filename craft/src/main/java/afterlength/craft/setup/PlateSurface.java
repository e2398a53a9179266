package afterlength.craft.setup;

import java.util.List;

/** What is known of the outside of a plate about the axis of the post. Heights grow away from the inside, on belly and back alike. */
public sealed interface PlateSurface {
    /**
     * A height and two slopes, as read with a small bevel.
     *
     * @param height_mm over the gluing plane
     * @param slopeAlong_deg positive when the outside rises to the tail
     * @param slopeAcross_deg positive when it rises to the treble side
     */
    record Sloped(double height_mm, double slopeAlong_deg, double slopeAcross_deg) implements PlateSurface {}

    /**
     * Heights at five points or more, one of them best on the axis and the others about 5 mm from it on either side, along and
     * across. A paraboloid is laid through them. The third bend of an arch is left out: at 5 mm on a full arch it turns a slope by
     * less than 0.2 degrees, and by four times as much at 10 mm; nearer points feel reading errors more.
     */
    record Heights(List<PlateHeight> points) implements PlateSurface {
        public Heights {
            points = List.copyOf(points);
        }
    }
}
