package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
import afterlength.workshop.agreement.Tax;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * What lines come to. The net is the sum of the lines, the tax the sum over the rates, the total the two together, all exactly.
 *
 * @param parts one for each rate, the lowest first
 */
record InvoiceSum(Money net, List<TaxPart> parts, Money tax, Money total) {

    static InvoiceSum of(List<InvoiceLine> lines, Rounding rounding) {
        Map<Integer, List<Money>> byRate = lines.stream()
                .collect(Collectors.groupingBy(
                        InvoiceLine::taxPermille,
                        TreeMap::new,
                        Collectors.mapping(InvoiceLine::netMinor, Collectors.toList())));
        List<TaxPart> parts = byRate.entrySet().stream()
                .map(rate -> part(new Tax(rate.getKey()), rate.getValue(), rounding))
                .toList();
        Money net = parts.stream().map(TaxPart::net).reduce(Money.NOTHING, Money::plus);
        Money tax = parts.stream().map(TaxPart::tax).reduce(Money.NOTHING, Money::plus);
        return new InvoiceSum(net, parts, tax, net.plus(tax));
    }

    private static TaxPart part(Tax rate, List<Money> nets, Rounding rounding) {
        return new TaxPart(rate, nets.stream().reduce(Money.NOTHING, Money::plus), rounding.tax(nets, rate));
    }
}
