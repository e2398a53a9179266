package afterlength.workshop.advice;

import afterlength.workshop.agreement.AccessStudy;
import afterlength.workshop.examination.Answer;
import afterlength.workshop.examination.Finding;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What is known of a finding, by the names that conditions use; what nobody wrote down is missing. */
record Facts(Map<String, String> byName) {
    /** The names a condition may use, with the words for what is missing. */
    static final Map<String, String> WORDS = Map.of(
            "age", "whether it is fresh or old",
            "hinders", "whether it hinders playing",
            "worse", "whether it gets worse",
            "size_mm", "its size",
            "closes_dry", "whether it closes dry by hand",
            "cleanable", "whether it can be cleaned",
            "step_mm", "how far its edges stand out of level",
            "under_post", "whether it runs under the post",
            "under_bar", "whether it runs under the bar");

    /** The last five come from a study of how the crack is reached. */
    static Facts of(Finding finding, @Nullable AccessStudy study) {
        Map<String, String> facts = new HashMap<>();
        facts.put("age", finding.age().name());
        facts.put("hinders", finding.hindersPlaying().name());
        facts.put("worse", finding.getsWorse().name());
        facts.values().removeIf(value -> value.equals(Answer.UNKNOWN.name()));
        if (finding.sizeMm() != null) {
            facts.put("size_mm", BigDecimal.valueOf(finding.sizeMm()).toPlainString());
        }
        if (study != null) {
            facts.put("closes_dry", answer(study.closesDry()));
            facts.put("cleanable", answer(study.cleanable()));
            facts.put("step_mm", BigDecimal.valueOf(study.stepMm()).toPlainString());
            facts.put("under_post", answer(study.underPost()));
            facts.put("under_bar", answer(study.underBar()));
        }
        return new Facts(Map.copyOf(facts));
    }

    private static String answer(boolean yes) {
        return (yes ? Answer.YES : Answer.NO).name();
    }

    Optional<String> find(String name) {
        return Optional.ofNullable(byName.get(name));
    }
}
