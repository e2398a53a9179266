package afterlength.workshop.retouch;

/**
 * One colour in a recipe.
 *
 * @param coats of the whole film
 * @param share of the mixture, 0 to 1
 * @param drops whole drops beside those of the other colours
 * @param sensitivity ΔE00 in daylight when 5 % off
 */
record MixLine(PaletteColour colour, double coats, double share, int drops, double sensitivity) {}
