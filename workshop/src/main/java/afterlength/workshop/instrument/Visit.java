package afterlength.workshop.instrument;

import afterlength.craft.units.Money;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * One stay of an instrument in the shop, from receipt to handover.
 *
 * @param number the shop's own number, printed on every paper: "2026-014"
 * @param insuredValueMinor as the owner stated it, in minor units
 */
public record Visit(
        long id,
        long instrumentId,
        String number,
        LocalDate receivedOn,
        String broughtBy,
        String reason,
        String wish,
        String accessories,
        String conditionWords,
        @Nullable Money insuredValueMinor,
        @Nullable LocalDate promisedOn,
        int version) {}
