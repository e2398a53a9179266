package afterlength.workshop.retouch;

import afterlength.craft.colour.Colorant;
import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Spectrum;
import java.time.Instant;

/**
 * A colour of the shop's palette, as its drawdowns gave it. It does not change: drawn down anew it is a new colour, and the old one
 * is put away.
 *
 * @param medium what it was drawn down in, and how strong
 * @param reversibleWith what takes a film of it off again
 * @param spectral whether reflectances were measured, or only colours
 * @param absorption of one coat
 * @param scatter of one coat
 * @param largestDifference ΔE00 in daylight between a drawdown and the same film counted again, of the worst one
 */
public record PaletteColour(
        long id,
        String name,
        String medium,
        String reversibleWith,
        ColourClass colourClass,
        boolean spectral,
        Spectrum absorption,
        Spectrum scatter,
        double largestDifference,
        boolean putAway,
        Instant writtenAt,
        String hand) {

    /** Counted in coats. Two colours may be called alike, so the arithmetic knows it by its number. */
    Colorant colorant() {
        return new Colorant(Long.toString(id), absorption, scatter);
    }

    String words() {
        return medium.isEmpty() ? name : name + " in " + medium;
    }
}
