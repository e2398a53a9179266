package afterlength.workshop.agreement;

import afterlength.craft.units.Money;
import java.time.LocalDate;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * An owner's word, before it is kept as an {@link Agreement}.
 *
 * @param accepted ids of the treatments that are to be done; none when the instrument is left as it is
 * @param agreedBy the owner, or who speaks for the owner
 */
public record Consent(
        long visitId,
        Set<Long> accepted,
        LocalDate agreedOn,
        String agreedBy,
        Means means,
        @Nullable Money ceiling,
        @Nullable LocalDate promisedOn,
        String remark,
        String hand) {
    public Consent {
        accepted = Set.copyOf(accepted);
    }
}
