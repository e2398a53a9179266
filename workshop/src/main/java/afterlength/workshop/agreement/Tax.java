package afterlength.workshop.agreement;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.Figures;

/**
 * Value added tax in tenths of a per cent. It is reckoned once, on a sum, and rounded half up to the whole minor unit:
 * {@code ⌊(net · permille + 500) / 1000⌋}. Which rate applies is for the shop to know; none is proposed here.
 */
public record Tax(int permille) {
    public Tax {
        if (permille < 0 || permille > 1000) {
            throw new IllegalArgumentException(
                    "tax is " + permille + " tenths of a per cent; allowed is 0 to 1000, that is 0 to 100 %");
        }
    }

    public Money on(Money net) {
        long tenths = Math.multiplyExact(net.minor(), permille);
        return new Money(Math.floorDiv(Math.addExact(tenths, 500), 1000));
    }

    public Money added(Money net) {
        return net.plus(on(net));
    }

    /** "19 %". */
    public String rate() {
        return Figures.plain(permille / 10.0) + " %";
    }

    /** What stands after a price that contains it. */
    public String withWords() {
        return permille == 0 ? "no tax added" : "with " + rate() + " tax";
    }
}
