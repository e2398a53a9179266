package afterlength.workshop.agreement;

import afterlength.craft.estimate.HandsOn;
import java.util.List;
import java.util.Optional;

/**
 * A template's steps, stretched so that their least minutes add up to a treatment's low figure and their most minutes to its high
 * one. Each step keeps its share of the least minutes and of the spread, and its usual time keeps its place between the two.
 *
 * <p>A treatment in own words is one step; its usual time is taken in the middle, for want of anything better.
 */
final class StretchedSteps {
    private final TreatmentTemplate template;
    private final Treatment treatment;

    private StretchedSteps(TreatmentTemplate template, Treatment treatment) {
        this.template = template;
        this.treatment = treatment;
    }

    static List<TemplateStep> of(Treatment treatment, Optional<TreatmentTemplate> template) {
        return template.filter(known -> !known.steps().isEmpty())
                .map(known -> new StretchedSteps(known, treatment).steps())
                .orElseGet(() -> List.of(inOwnWords(treatment)));
    }

    private static TemplateStep inOwnWords(Treatment treatment) {
        double low_min = treatment.minutesLow();
        double high_min = treatment.minutesHigh();
        return new TemplateStep(
                treatment.title(),
                new HandsOn(low_min, (low_min + high_min) / 2, high_min),
                new Wait(0, 0, 0),
                "",
                false,
                "OWN WORDS");
    }

    private List<TemplateStep> steps() {
        if (treatment.minutesLow() == template.minutesLow() && treatment.minutesHigh() == template.minutesHigh()) {
            return template.steps();
        }
        return template.steps().stream()
                .map(step -> step.taking(stretched(step.handsOn())))
                .toList();
    }

    private HandsOn stretched(HandsOn usual) {
        double low_min = treatment.minutesLow() * share(usual.low_min(), template.minutesLow());
        double spread_min = treatment.minutesHigh() - treatment.minutesLow();
        double usualSpread_min = template.minutesHigh() - template.minutesLow();
        double width_min = spread_min * share(usual.high_min() - usual.low_min(), usualSpread_min);
        double place = usual.high_min() == usual.low_min()
                ? 0.5
                : (usual.typical_min() - usual.low_min()) / (usual.high_min() - usual.low_min());
        return new HandsOn(low_min, low_min + place * width_min, low_min + width_min);
    }

    /** A step's part of a sum; the same for every step when the sum is nothing. */
    private double share(double part, double sum) {
        return sum == 0 ? 1.0 / template.steps().size() : part / sum;
    }
}
