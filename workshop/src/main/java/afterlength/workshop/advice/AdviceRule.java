package afterlength.workshop.advice;

import afterlength.workshop.agreement.FindingLine;
import afterlength.workshop.agreement.Fit;
import java.util.List;

/**
 * One reason for or against one treatment of a kind of finding.
 *
 * @param key its name in the table
 * @param treatment key of a treatment template, or {@link #LEAVE}
 * @param source where it is from: an entry of the bibliography, or common practice
 */
record AdviceRule(
        String key,
        List<Fit> fits,
        List<Condition> conditions,
        String treatment,
        boolean speaksFor,
        String reason,
        String source) {
    /** To do nothing, and write it down. */
    static final String LEAVE = "LEAVE";

    boolean isAbout(FindingLine finding) {
        return fits.stream().anyMatch(fit -> fit.meets(finding));
    }

    Holds in(Facts facts) {
        return conditions.stream().map(condition -> condition.in(facts)).reduce(Holds.YES, Holds::and);
    }

    /** What would have to be known before the rule speaks. */
    List<String> openQuestions(Facts facts) {
        return conditions.stream()
                .filter(condition -> condition.in(facts) == Holds.UNKNOWN)
                .map(Condition::question)
                .toList();
    }

    /** Key in the bibliography, empty for common practice. */
    String sourceKey() {
        int hash = source.indexOf('#');
        return hash < 0 ? "" : source.substring(hash + 1);
    }
}
