package afterlength.craft.units;

/**
 * An amount in whole minor units (cents, pence) of the shop's one currency. No floating point: sums are exact, and overflow is
 * an error, not a wrong bill.
 */
public record Money(long minor) {
    public static final Money NOTHING = new Money(0);

    public Money plus(Money other) {
        return new Money(Math.addExact(minor, other.minor));
    }

    /** What takes this amount back, as a credit note does. */
    public Money negated() {
        return new Money(Math.negateExact(minor));
    }

    /** Price of some minutes at a rate per hour, rounded half up to the whole minor unit. */
    public static Money forMinutes(long minutes, Money perHour) {
        long perHourTimesMinutes = Math.multiplyExact(minutes, perHour.minor);
        return new Money(Math.floorDiv(Math.addExact(perHourTimesMinutes, 30), 60));
    }
}
