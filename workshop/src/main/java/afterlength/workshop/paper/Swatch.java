package afterlength.workshop.paper;

/**
 * A filled rectangle whose colour matters in itself and not as an {@link Ink}. Where red, green and blue are alike it is
 * written as a grey, so that a printer mixes it of black alone.
 *
 * @param corner its lower left corner
 * @param red share of full light, 0 to 1, likewise green and blue
 */
public record Swatch(Point corner, double width_mm, double height_mm, double red, double green, double blue) {
    boolean isGrey() {
        return red == green && green == blue;
    }
}
