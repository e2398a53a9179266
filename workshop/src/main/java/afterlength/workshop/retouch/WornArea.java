package afterlength.workshop.retouch;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A measured worn area of a visit, to be varnished.
 *
 * @param dryUm the build that is wanted
 * @param wetCoatUm how thick one coat may lie wet
 */
public record WornArea(
        long id,
        long visitId,
        long findingId,
        long varnishId,
        @Nullable Long replaces,
        boolean withdrawn,
        double areaCm2,
        double plusMinusCm2,
        double dryUm,
        double wetCoatUm,
        Instant writtenAt,
        String hand) {

    WornArea withdrawnAt(Instant now) {
        return new WornArea(
                0, visitId, findingId, varnishId, id, true, areaCm2, plusMinusCm2, dryUm, wetCoatUm, now, hand);
    }
}
