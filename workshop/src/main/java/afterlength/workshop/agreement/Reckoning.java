package afterlength.workshop.agreement;

import afterlength.craft.estimate.WorkEstimate;
import afterlength.craft.units.Money;
import afterlength.workshop.ledger.Settings;
import java.util.List;

/**
 * What lines come to together. The expected prices of the lines add up to the expected sum, exactly; tax is reckoned once on that
 * sum. The range of the sum is simulated and narrower than the ranges of the lines laid end to end, because it is unlikely that
 * every line goes quickly or every line slowly.
 *
 * @param tax on the expected sum
 * @param price with tax
 */
record Reckoning(List<ReckonedLine> lines, WorkSpan work, Money expectedBeforeTax, Money tax, PriceSpan price) {

    static Reckoning of(List<ReckonedLine> lines, Settings settings) {
        Tax tax = new Tax(settings.taxPermille());
        Money material = Money.NOTHING;
        Money expected = Money.NOTHING;
        WorkEstimate estimate = WorkEstimate.NOTHING;
        long expected_min = 0;
        for (ReckonedLine line : lines) {
            material = material.plus(line.treatment().materialMinor());
            expected = expected.plus(line.price().expected());
            estimate = estimate.and(line.estimate());
            expected_min += line.work().expected_min();
        }
        WorkSpan work = WorkSpan.of(estimate, expected_min);
        PriceSpan price = PriceSpan.outward(
                tax.added(Money.forMinutes(work.low_min(), settings.perHour()).plus(material)),
                tax.added(expected),
                tax.added(Money.forMinutes(work.high_min(), settings.perHour()).plus(material)));
        return new Reckoning(List.copyOf(lines), work, expected, tax.on(expected), price);
    }
}
