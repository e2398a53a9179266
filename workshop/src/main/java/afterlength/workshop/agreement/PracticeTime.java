package afterlength.workshop.agreement;

import afterlength.craft.estimate.HandsOn;
import java.time.Instant;

/**
 * What a step of a template takes in this shop, in place of common practice.
 *
 * @param template key of the template
 * @param step name of the step in it
 */
public record PracticeTime(
        String template, String step, HandsOn handsOn, Wait waiting, String hand, Instant writtenAt) {
    boolean isOf(TreatmentTemplate of, TemplateStep one) {
        return template.equals(of.key()) && step.equals(one.name());
    }
}
