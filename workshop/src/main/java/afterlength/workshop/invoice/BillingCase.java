package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
import afterlength.workshop.agreement.Agreement;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A visit to be billed.
 *
 * @param agreement what holds; null when nothing was agreed
 * @param minutesBeside counted minutes that belong to no agreed line
 * @param bills what was issued so far, credit notes too
 */
record BillingCase(
        Visit visit,
        Instrument instrument,
        Owner owner,
        Settings settings,
        InvoiceRules rules,
        @Nullable Agreement agreement,
        List<OfferedLine> offered,
        int minutesBeside,
        List<Billed> bills) {

    String address() {
        return "/visits/" + visit.id() + "/invoice";
    }

    String subject() {
        return instrument.name() + ", visit " + visit.number();
    }

    String seller() {
        return joined(settings.shopName(), settings.address());
    }

    String buyer() {
        return joined(owner.name(), owner.address());
    }

    /** With tax, over the bills that stand. */
    Money billedSoFar() {
        return bills.stream()
                .filter(Billed::standing)
                .map(bill -> bill.invoice().totalMinor())
                .reduce(Money.NOTHING, Money::plus);
    }

    private static String joined(String name, String address) {
        return Stream.of(name, address.strip()).filter(part -> !part.isEmpty()).collect(Collectors.joining("\n"));
    }
}
