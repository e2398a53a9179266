package afterlength.craft.setup;

/**
 * The outside of a plate over its gluing plane at one point.
 *
 * @param along_mm from the axis of the post, to the tail
 * @param across_mm from the axis of the post, to the treble side
 * @param height_mm away from the inside of the body
 */
public record PlateHeight(double along_mm, double across_mm, double height_mm) {}
