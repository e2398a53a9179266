/**
 * Colours as they are measured and as they are mixed: CIE colours and differences, films of colorants over a ground, the recipe
 * for a retouch with its limits, and how far a mended line stands out. Colours are CIE 1931 2° and L*a*b*, of D65 unless a light
 * is named. Gloss and relief are not here, and they decide as much.
 */
@NullMarked
package afterlength.craft.colour;

import org.jspecify.annotations.NullMarked;
