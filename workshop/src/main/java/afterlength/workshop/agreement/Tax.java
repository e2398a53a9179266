package afterlength.workshop.agreement;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.Typed;
import java.math.BigDecimal;

/**
 * Value added tax in tenths of a per cent, in whole numbers throughout. A half minor unit is rounded away from nothing,
 * {@code ⌊(|net| · permille + 500) / 1000⌋} with the sign of the net, so that the tax of what is credited is exactly the tax of
 * what was billed. Which rate applies is for the shop to know; none is proposed here.
 */
public record Tax(int permille) {
    /** No country's rate reaches it; a guard against slips. */
    private static final int HIGHEST_TYPED = 500;

    public Tax {
        if (permille < 0 || permille > 1000) {
            throw new IllegalArgumentException(
                    "tax is " + permille + " tenths of a per cent; allowed is 0 to 1000, that is 0 to 100 %");
        }
    }

    /** A rate in per cent as it was typed, with one decimal at most; nothing typed is no tax. */
    public static Tax read(Typed typed, String name, String label) {
        String text = typed.raw(name).strip();
        if (text.isEmpty()) {
            return new Tax(0);
        }
        if (!text.matches("[-+]?\\d{1,6}([.,]\\d{0,6})?")) {
            typed.note(
                    name,
                    label + " is “" + text + "”, which is not a number. Allowed is 0 to 50 %, such as 12.5 or 12,5.");
            return new Tax(0);
        }
        BigDecimal permille =
                new BigDecimal(text.replace(',', '.')).movePointRight(1).stripTrailingZeros();
        if (permille.signum() < 0 || permille.compareTo(BigDecimal.valueOf(HIGHEST_TYPED)) > 0) {
            typed.note(name, label + " is " + text + "; allowed is 0 to 50 %.");
            return new Tax(0);
        }
        if (permille.scale() > 0) {
            typed.note(name, label + " is " + text + " %; at most one decimal is kept, such as 5.5.");
            return new Tax(0);
        }
        return new Tax(permille.intValueExact());
    }

    public Money on(Money net) {
        long thousandths = Math.multiplyExact(Math.absExact(net.minor()), permille);
        Money rounded = new Money(Math.floorDiv(Math.addExact(thousandths, 500), 1000));
        return net.minor() < 0 ? rounded.negated() : rounded;
    }

    public Money added(Money net) {
        return net.plus(on(net));
    }

    /** As it stands in a field: "19", "5.5". */
    public String typed() {
        return permille / 10 + (permille % 10 == 0 ? "" : "." + permille % 10);
    }

    /** "19 %". */
    public String rate() {
        return typed() + " %";
    }

    /** What stands after a price that contains it. */
    public String withWords() {
        return permille == 0 ? "no tax added" : "with " + rate() + " tax";
    }
}
