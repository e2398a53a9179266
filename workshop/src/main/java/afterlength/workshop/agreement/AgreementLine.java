package afterlength.workshop.agreement;

import afterlength.craft.units.Money;

/** A line as it was offered when an agreement was made, accepted or not; prices before tax. */
public record AgreementLine(
        long agreementId,
        long treatmentId,
        int position,
        String title,
        boolean accepted,
        Money lowMinor,
        Money expectedMinor,
        Money highMinor) {

    static AgreementLine of(long agreementId, int position, ReckonedLine line, boolean accepted) {
        return new AgreementLine(
                agreementId,
                line.id(),
                position,
                line.treatment().title(),
                accepted,
                line.price().low(),
                line.price().expected(),
                line.price().high());
    }

    PriceSpan price() {
        return new PriceSpan(lowMinor, expectedMinor, highMinor);
    }
}
