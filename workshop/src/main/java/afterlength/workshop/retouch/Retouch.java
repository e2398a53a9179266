package afterlength.workshop.retouch;

import afterlength.craft.colour.ColourClass;
import afterlength.craft.colour.Spectrum;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A loss to be retouched: the sealed ground in it and the varnish beside it, as measured.
 *
 * @param findingId the finding it belongs to
 * @param colorants at most this many in one recipe
 * @param filmCoats the most that the film may come to, in coats of the palette
 */
public record Retouch(
        long id,
        long visitId,
        @Nullable Long replaces,
        boolean withdrawn,
        @Nullable Long findingId,
        String place,
        ColourClass groundClass,
        boolean groundSpectral,
        Spectrum ground,
        ColourClass targetClass,
        boolean targetSpectral,
        Spectrum target,
        int colorants,
        double filmCoats,
        Instant writtenAt,
        String hand) {

    /** The same words as a new row that replaces this one and holds no more, or again. */
    Retouch again(boolean nowWithdrawn, Instant at) {
        return new Retouch(
                0,
                visitId,
                id,
                nowWithdrawn,
                findingId,
                place,
                groundClass,
                groundSpectral,
                ground,
                targetClass,
                targetSpectral,
                target,
                colorants,
                filmCoats,
                at,
                hand);
    }
}
