package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
import afterlength.workshop.agreement.Tax;
import java.util.List;

/** When tax is rounded to the whole minor unit. Both ways are in use; the shop chooses one, and each paper states it. */
public enum Rounding {
    PER_LINE("Tax is reckoned on each line, rounded half up to 0.01, and added up.") {
        @Override
        Money tax(List<Money> nets, Tax rate) {
            return nets.stream().map(rate::on).reduce(Money.NOTHING, Money::plus);
        }
    },
    PER_TOTAL("Tax is reckoned once for each rate, on the sum of its lines, rounded half up to 0.01.") {
        @Override
        Money tax(List<Money> nets, Tax rate) {
            return rate.on(nets.stream().reduce(Money.NOTHING, Money::plus));
        }
    };

    private final String words;

    Rounding(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** The tax on lines of one rate. */
    abstract Money tax(List<Money> nets, Tax rate);
}
