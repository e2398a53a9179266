package afterlength.workshop.advice;

import java.util.List;

/**
 * One thing that could be done about a finding, with what speaks for and against it.
 *
 * @param key of the treatment template, or {@link AdviceRule#LEAVE}
 * @param open rules that could speak if more were known
 */
record Option(String key, String title, List<AdviceRule> speaksFor, List<AdviceRule> speaksAgainst, List<Open> open) {
    /** A rule that waits for answers. */
    record Open(AdviceRule rule, List<String> questions) {
        String words() {
            return "Would speak " + (rule.speaksFor() ? "for" : "against") + " it, not known yet: "
                    + String.join(", ", questions) + ". " + rule.reason();
        }
    }
}
