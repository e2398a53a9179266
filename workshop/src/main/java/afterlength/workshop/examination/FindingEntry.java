package afterlength.workshop.examination;

import afterlength.workshop.desk.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * A finding as a page or a paper shows it.
 *
 * @param seenOn the photographs in view on which it is seen
 * @param earlier what was written before, the newest first
 */
record FindingEntry(Finding finding, List<Photograph> seenOn, List<Finding> earlier) {

    /** "42.0 ± 0.5 mm", "no size: runs under the board", or nothing. */
    static String size(Finding finding) {
        Double size_mm = finding.sizeMm();
        Double plusMinus_mm = finding.sizePlusMinusMm();
        if (size_mm != null && plusMinus_mm != null) {
            return Figures.plusMinus(size_mm, plusMinus_mm, "mm");
        }
        return finding.sizeReason().isEmpty() ? "" : "no size: " + finding.sizeReason();
    }

    /** Place, size, age and what follows for playing, in one line. */
    static String about(Finding finding) {
        List<String> parts = new ArrayList<>();
        parts.add(finding.place());
        parts.add(size(finding));
        parts.add(finding.age() == FindingAge.UNKNOWN ? "" : finding.age().words());
        parts.add(
                switch (finding.hindersPlaying()) {
                    case YES -> "hinders playing";
                    case NO -> "does not hinder playing";
                    case UNKNOWN -> "";
                });
        parts.add(
                switch (finding.getsWorse()) {
                    case YES -> "gets worse";
                    case NO -> "does not get worse";
                    case UNKNOWN -> "";
                });
        return String.join(" · ", parts.stream().filter(part -> !part.isBlank()).toList());
    }

    String about() {
        return about(finding);
    }

    /** What is missing from a draft, as a sentence, or nothing. */
    String draftWords() {
        return finding.draft() ? "Draft: still without " + String.join(" and ", finding.missing()) + "." : "";
    }

    /** A gentle note about words that give no extent, or nothing. */
    String wordNote() {
        List<String> found = RelativeWords.in(finding.observation(), finding.place());
        return found.isEmpty()
                ? ""
                : "“" + String.join("”, “", found)
                        + "”: another reader cannot tell how much that is. A size or an extent can.";
    }
}
