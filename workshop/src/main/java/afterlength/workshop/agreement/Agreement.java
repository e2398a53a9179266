package afterlength.workshop.agreement;

import afterlength.craft.units.Money;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What an owner chose, as it stood when it was agreed. Never changed: a later word is a new agreement that names the one it
 * replaces.
 *
 * @param lowMinor low end of the price with tax, rounded down to a full step
 * @param expectedMinor expected price with tax
 * @param highMinor high end of the price with tax, rounded up to a full step
 * @param ceilingMinor not beyond this without the owner's word; null when none was set
 * @param hand who wrote it down
 */
public record Agreement(
        long id,
        long visitId,
        @Nullable Long replaces,
        Scope scope,
        LocalDate agreedOn,
        String agreedBy,
        Means means,
        Money lowMinor,
        Money expectedMinor,
        Money highMinor,
        int taxPermille,
        Money perHourMinor,
        @Nullable Money ceilingMinor,
        @Nullable LocalDate promisedOn,
        String remark,
        Instant writtenAt,
        String hand) {

    PriceSpan price() {
        return new PriceSpan(lowMinor, expectedMinor, highMinor);
    }
}
