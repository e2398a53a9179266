package afterlength.workshop.advice;

import afterlength.workshop.agreement.FindingLine;
import afterlength.workshop.agreement.TreatmentTemplate;
import afterlength.workshop.agreement.TreatmentTemplates;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What could be done about a finding: to leave it, and every treatment that fits it or that a rule names, each with its reasons. It
 * counts nothing and recommends nothing; the order is that of the job, to leave it first.
 */
record Advice(List<Option> options) {
    static final String LEFT = "Leave it as it is, and write that down";

    static Advice of(FindingLine finding, Facts facts) {
        return of(finding, facts, AdviceRules.list());
    }

    static Advice of(FindingLine finding, Facts facts, List<AdviceRule> known) {
        List<AdviceRule> rules =
                known.stream().filter(rule -> rule.isAbout(finding)).toList();
        Set<String> keys = new LinkedHashSet<>();
        keys.add(AdviceRule.LEAVE);
        TreatmentTemplates.list().stream()
                .filter(template -> TreatmentTemplates.listFitting(finding).contains(template)
                        || rules.stream().anyMatch(rule -> rule.treatment().equals(template.key())))
                .map(TreatmentTemplate::key)
                .forEach(keys::add);
        return new Advice(keys.stream().map(key -> option(key, facts, rules)).toList());
    }

    private static Option option(String key, Facts facts, List<AdviceRule> rules) {
        List<AdviceRule> speaksFor = new ArrayList<>();
        List<AdviceRule> against = new ArrayList<>();
        List<Option.Open> open = new ArrayList<>();
        for (AdviceRule rule : rules) {
            if (!rule.treatment().equals(key)) {
                continue;
            }
            switch (rule.in(facts)) {
                case YES -> (rule.speaksFor() ? speaksFor : against).add(rule);
                case UNKNOWN -> open.add(new Option.Open(rule, rule.openQuestions(facts)));
                case NO -> {}
            }
        }
        return new Option(key, title(key), List.copyOf(speaksFor), List.copyOf(against), List.copyOf(open));
    }

    static String title(String key) {
        return key.equals(AdviceRule.LEAVE)
                ? LEFT
                : TreatmentTemplates.find(key).map(TreatmentTemplate::title).orElse(key);
    }

    boolean offers(String key) {
        return options.stream().anyMatch(option -> option.key().equals(key));
    }
}
