package afterlength.workshop.desk;

import afterlength.craft.units.Money;
import java.math.BigDecimal;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Reads and writes amounts with two decimals; both decimal signs are read, no floating point is used. */
public final class MoneyText {
    private static final Pattern AMOUNT = Pattern.compile("\\d{1,12}([.,]\\d{1,2})?");

    private MoneyText() {}

    /** An amount that may be left out. */
    public static @Nullable Money read(Typed typed, String name, String label) {
        String text = typed.raw(name).strip();
        if (text.isEmpty()) {
            return null;
        }
        if (!AMOUNT.matcher(text).matches()) {
            typed.note(
                    name,
                    label + " is “" + text
                            + "”; allowed is an amount with at most two decimals, such as 1200 or 1200,50.");
            return null;
        }
        BigDecimal amount = new BigDecimal(text.replace(',', '.'));
        return new Money(amount.movePointRight(2).longValueExact());
    }

    public static String typed(Money money) {
        return "%d.%02d".formatted(money.minor() / 100, money.minor() % 100);
    }

    /** With the currency: EUR 1 200.50, EUR −0.50. */
    public static String words(Money money, String currency) {
        return currency + "\u00a0" + bare(money);
    }

    /** With a thin space between thousands and a true minus sign before the figures: 1 200.50, −0.50. */
    public static String bare(Money money) {
        String sign = money.minor() < 0 ? "−" : "";
        long minor = Math.absExact(money.minor());
        return sign + "%,d".formatted(minor / 100).replace(',', '\u202f') + ".%02d".formatted(minor % 100);
    }
}
