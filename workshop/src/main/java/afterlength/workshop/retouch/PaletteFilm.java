package afterlength.workshop.retouch;

import afterlength.craft.colour.Spectrum;

/**
 * One drawdown of a colour as it was measured.
 *
 * @param difference ΔE00 in daylight to the same film counted again
 */
record PaletteFilm(double coats, Spectrum ground, Spectrum film, double difference) {}
