package afterlength.start.demo;

/** The colour of a material at a place, as linear light reflected, written into a colour the caller keeps. */
@FunctionalInterface
interface Surface {
    void colourAt(double x_mm, double y_mm, Colour colour);
}
