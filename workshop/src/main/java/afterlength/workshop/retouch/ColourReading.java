package afterlength.workshop.retouch;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Spectrum;

/**
 * A colour as a person gave it.
 *
 * @param spectral whether its reflectance was measured; otherwise it is the smoothest one of a typed L*a*b*
 */
public record ColourReading(ColourClass colourClass, boolean spectral, Spectrum colour) {}
