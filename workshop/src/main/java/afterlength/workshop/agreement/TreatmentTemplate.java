package afterlength.workshop.agreement;

import afterlength.craft.estimate.HandsOn;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A treatment as the shop usually proposes it, before it is fitted to an instrument.
 *
 * @param key its name in the tables, kept with each treatment made from it
 * @param counts what its minutes count: "one crack"; empty when the whole treatment
 * @param mark where its words are from
 */
public record TreatmentTemplate(
        String key,
        Tier tier,
        JobPart job,
        String title,
        String reason,
        String ifLeft,
        Undoing undoing,
        String reversibility,
        String materials,
        String counts,
        List<Fit> fits,
        String caution,
        String mark,
        List<TemplateStep> steps) {
    public TreatmentTemplate {
        fits = List.copyOf(fits);
        steps = List.copyOf(steps);
    }

    /** The same with other figures in its steps. */
    TreatmentTemplate taking(List<TemplateStep> others) {
        return new TreatmentTemplate(
                key,
                tier,
                job,
                title,
                reason,
                ifLeft,
                undoing,
                reversibility,
                materials,
                counts,
                fits,
                caution,
                mark,
                others);
    }

    boolean fits(FindingLine finding) {
        return fits.stream().anyMatch(fit -> fit.meets(finding));
    }

    /** Minutes when every step goes quickly. */
    public int minutesLow() {
        return sum(HandsOn::low_min);
    }

    /** Minutes when every step goes slowly. */
    public int minutesHigh() {
        return sum(HandsOn::high_min);
    }

    private int sum(ToDoubleFunction<HandsOn> figure) {
        return (int) Math.round(
                steps.stream().map(TemplateStep::handsOn).mapToDouble(figure).sum());
    }
}
