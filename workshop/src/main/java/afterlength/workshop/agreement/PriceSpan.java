package afterlength.workshop.agreement;

import afterlength.craft.units.Money;

/**
 * A price as it can honestly be named: an expected amount, to the minor unit so that lines add up, and a range whose ends are
 * rounded outward to full steps of {@link #STEP_MINOR}, for nobody knows a range to the cent.
 */
public record PriceSpan(Money low, Money expected, Money high) {
    /** Five units of a currency with two decimals. */
    static final long STEP_MINOR = 500;

    static final PriceSpan NOTHING = new PriceSpan(Money.NOTHING, Money.NOTHING, Money.NOTHING);

    static PriceSpan outward(Money low, Money expected, Money high) {
        return new PriceSpan(down(low), expected, up(high));
    }

    private static Money down(Money amount) {
        return new Money(Math.floorDiv(amount.minor(), STEP_MINOR) * STEP_MINOR);
    }

    private static Money up(Money amount) {
        long steps = Math.floorDiv(Math.addExact(amount.minor(), STEP_MINOR - 1), STEP_MINOR);
        return new Money(Math.multiplyExact(steps, STEP_MINOR));
    }
}
