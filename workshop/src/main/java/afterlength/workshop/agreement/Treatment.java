package afterlength.workshop.agreement;

import afterlength.craft.units.Money;

/**
 * One line of a proposal: what is done about findings.
 *
 * @param position its place in the order of the proposal
 * @param ifLeft what happens when it is not done
 * @param reversibility how it can be taken back, in words
 * @param template key of the template it was made from, empty for own words
 * @param minutesLow hands-on minutes when everything goes quickly
 * @param minutesHigh hands-on minutes when everything goes slowly
 * @param materialMinor price of its materials before tax
 */
public record Treatment(
        long id,
        long visitId,
        int position,
        Tier tier,
        String title,
        String reason,
        String ifLeft,
        Undoing undoing,
        String reversibility,
        String materials,
        String template,
        int minutesLow,
        int minutesHigh,
        Money materialMinor,
        boolean putAway,
        int version) {
    public Treatment {
        if (title.isBlank()) {
            throw new IllegalArgumentException("a treatment has a title");
        }
        if (minutesLow < 0 || minutesHigh < minutesLow) {
            throw new IllegalArgumentException("a treatment's minutes are " + minutesLow + " to " + minutesHigh
                    + "; allowed is least ≤ most, none below 0");
        }
    }

    /** A line not yet in the shop, in the template's own words; its place is found when it is added. */
    public static Treatment from(TreatmentTemplate template, long visitId) {
        return new Treatment(
                0,
                visitId,
                0,
                template.tier(),
                template.title(),
                template.reason(),
                template.ifLeft(),
                template.undoing(),
                template.reversibility(),
                template.materials(),
                template.key(),
                template.minutesLow(),
                template.minutesHigh(),
                Money.NOTHING,
                false,
                1);
    }

    boolean treatsTheInstrument() {
        return TreatmentTemplates.partOf(this).treatsTheInstrument();
    }
}
