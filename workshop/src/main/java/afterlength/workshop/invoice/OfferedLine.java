package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
import afterlength.workshop.agreement.AgreementLine;
import org.jspecify.annotations.Nullable;

/**
 * An agreed line with what the diary tells of it, offered for a bill.
 *
 * @param minutes hands-on minutes counted for its steps
 * @param done whether anything of it was done, or it has no steps because it was done before the agreement
 * @param byTime the counted minutes at the agreed rate with its materials; null when no minutes were counted
 * @param offered before tax, never above the agreed range of the line
 * @param billedIn a bill that stands and holds it already; null when there is none
 */
record OfferedLine(
        AgreementLine agreed,
        int minutes,
        boolean done,
        @Nullable Money byTime,
        Money offered,
        @Nullable Invoice billedIn) {

    static OfferedLine of(
            AgreementLine agreed, int minutes, boolean done, @Nullable Money byTime, @Nullable Invoice billedIn) {
        Money reckoned = byTime == null ? agreed.expectedMinor() : byTime;
        Money offered = reckoned.minor() > agreed.highMinor().minor() ? agreed.highMinor() : reckoned;
        return new OfferedLine(agreed, minutes, done, byTime, offered, billedIn);
    }

    String key() {
        return "t" + agreed.treatmentId();
    }

    /** Whether its box is ticked before the person says anything. */
    boolean proposed() {
        return done && billedIn == null;
    }

    boolean cappedByRange() {
        return byTime != null && byTime.minor() > offered.minor();
    }
}
