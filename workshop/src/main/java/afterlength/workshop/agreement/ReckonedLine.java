package afterlength.workshop.agreement;

import afterlength.craft.estimate.WorkEstimate;
import afterlength.craft.units.Money;
import afterlength.workshop.ledger.Settings;

/** A line of a proposal with its time and its price before tax. */
record ReckonedLine(Treatment treatment, WorkEstimate estimate, WorkSpan work, PriceSpan price) {

    static ReckonedLine of(Treatment treatment, Settings settings) {
        WorkEstimate estimate = WorkEstimate.of(
                treatment.id(),
                TreatmentTemplates.listSteps(treatment).stream()
                        .map(TemplateStep::handsOn)
                        .toList());
        WorkSpan work = WorkSpan.of(estimate);
        return new ReckonedLine(treatment, estimate, work, price(treatment, work, settings.perHour()));
    }

    private static PriceSpan price(Treatment treatment, WorkSpan work, Money perHour) {
        return PriceSpan.outward(
                withMaterial(work.low_min(), treatment, perHour),
                withMaterial(work.expected_min(), treatment, perHour),
                withMaterial(work.high_min(), treatment, perHour));
    }

    private static Money withMaterial(long minutes, Treatment treatment, Money perHour) {
        return Money.forMinutes(minutes, perHour).plus(treatment.materialMinor());
    }

    long id() {
        return treatment.id();
    }
}
