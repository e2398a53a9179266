package afterlength.workshop.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.agreement.FindingLine;
import afterlength.workshop.agreement.TreatmentTemplates;
import afterlength.workshop.examination.Term;
import afterlength.workshop.examination.Vocabulary;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every rule of the table in every branch: it holds, one fact less and it waits, one fact otherwise and it is silent. */
class AdviceRulesTest {
    static List<AdviceRule> rules() {
        return AdviceRules.list();
    }

    static Stream<AdviceRule> conditional() {
        return rules().stream().filter(rule -> !rule.conditions().isEmpty());
    }

    /** Facts that meet every condition. */
    private static Map<String, String> meeting(AdviceRule rule) {
        Map<String, String> facts = new HashMap<>();
        rule.conditions().forEach(condition -> facts.put(condition.fact(), meeting(condition)));
        return facts;
    }

    private static String meeting(Condition condition) {
        return condition.sign().equals(">") ? plus(condition.value(), "0.1") : condition.value();
    }

    private static String failing(Condition condition) {
        return switch (condition.sign()) {
            case "=" -> "something else";
            case ">" -> condition.value();
            default -> plus(condition.value(), "0.1");
        };
    }

    private static String plus(String value, String more) {
        return new BigDecimal(value).add(new BigDecimal(more)).toPlainString();
    }

    private static FindingLine line(Term term) {
        return new FindingLine(1, term.part(), term.words(), "", null, null, false, false, "");
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aRuleNamesATreatmentOfOursAKnownFindingAReasonAndASource(AdviceRule rule) {
        assertThat(rule.treatment().equals(AdviceRule.LEAVE)
                        || TreatmentTemplates.find(rule.treatment()).isPresent())
                .as(rule.key() + " names " + rule.treatment())
                .isTrue();
        assertThat(Vocabulary.terms().stream().filter(term -> rule.isAbout(line(term))))
                .as(rule.key() + " is about a finding of the vocabulary")
                .isNotEmpty();
        assertThat(rule.reason()).endsWith(".");
        assertThat(rule.source()).matches("COMMON PRACTICE|docs/sources\\.md#[a-z0-9-]+");
    }

    @ParameterizedTest
    @MethodSource("conditional")
    void aRuleSpeaksWhenItsFactsHoldWaitsWhenOneIsMissingAndIsSilentWhenOneDiffers(AdviceRule rule) {
        assertThat(rule.in(new Facts(meeting(rule)))).isEqualTo(Holds.YES);
        for (Condition condition : rule.conditions()) {
            Map<String, String> missing = meeting(rule);
            missing.remove(condition.fact());
            assertThat(rule.in(new Facts(missing))).isEqualTo(Holds.UNKNOWN);
            assertThat(rule.openQuestions(new Facts(missing))).containsExactly(condition.question());
            Map<String, String> differing = meeting(rule);
            differing.put(condition.fact(), failing(condition));
            assertThat(rule.in(new Facts(differing))).isEqualTo(Holds.NO);
        }
    }

    @Test
    void theTableIsReadWhole() {
        assertThat(rules()).hasSizeGreaterThan(35).extracting(AdviceRule::key).doesNotHaveDuplicates();
        assertThat(rules()).anyMatch(AdviceRule::speaksFor).anyMatch(rule -> !rule.speaksFor());
    }

    @Test
    void toLeaveItIsAlwaysTheFirstOption() {
        for (Term term : Vocabulary.terms()) {
            Advice advice = Advice.of(line(term), new Facts(Map.of()));
            assertThat(advice.options().get(0).key()).isEqualTo(AdviceRule.LEAVE);
        }
    }

    @Test
    void aConditionThatCannotBeReadIsRefused() {
        assertThatThrownBy(() -> Condition.list("size_mm about 30"))
                .hasMessage(
                        "'size_mm about 30' is no condition; write a fact, one of = <= > and a value, such as size_mm<=30");
        assertThatThrownBy(() -> Condition.list("colour=RED"))
                .hasMessageStartingWith("no fact is called 'colour'; known are [age, cleanable, closes_dry");
    }
}
