package afterlength.workshop.examination;

import java.util.ArrayList;
import java.util.List;

/** The sentence in which an examination is told. */
final class ExaminationWords {
    private ExaminationWords() {}

    /** "Seven findings, two hinder playing, one gets worse. One is still a draft." */
    static String answer(List<Finding> findings) {
        if (findings.isEmpty()) {
            return "No finding written down yet.";
        }
        List<String> parts = new ArrayList<>();
        parts.add(Counted.words(findings.size(), "finding", "findings"));
        int hindering = count(findings, finding -> finding.hindersPlaying() == Answer.YES);
        int worsening = count(findings, finding -> finding.getsWorse() == Answer.YES);
        int drafts = count(findings, Finding::draft);
        if (hindering > 0) {
            parts.add(Counted.within(hindering, "hinders playing", "hinder playing"));
        }
        if (worsening > 0) {
            parts.add(Counted.within(worsening, "gets worse", "get worse"));
        }
        String sentence = String.join(", ", parts) + ".";
        return drafts == 0
                ? sentence
                : sentence + " " + Counted.words(drafts, "is still a draft.", "are still drafts.");
    }

    private static int count(List<Finding> findings, java.util.function.Predicate<Finding> which) {
        return (int) findings.stream().filter(which).count();
    }
}
