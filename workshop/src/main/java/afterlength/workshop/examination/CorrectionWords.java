package afterlength.workshop.examination;

import afterlength.workshop.desk.Days;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** How an entry read before it was corrected: only what differs, the newest wording first. */
final class CorrectionWords {
    private CorrectionWords() {}

    static String measures(Measure latest, List<Measure> earlier) {
        List<String> sentences = new ArrayList<>();
        Measure after = latest;
        for (Measure was : earlier) {
            sentences.add(sentence(after.writtenAt(), difference(was, after), was.writtenAt()));
            after = was;
        }
        return String.join(" ", sentences);
    }

    static String findings(Finding latest, List<Finding> earlier) {
        List<String> sentences = new ArrayList<>();
        Finding after = latest;
        for (Finding was : earlier) {
            sentences.add(sentence(after.writtenAt(), difference(was, after), was.writtenAt()));
            after = was;
        }
        return String.join(" ", sentences);
    }

    private static String sentence(java.time.Instant corrected, List<String> was, java.time.Instant written) {
        return "Corrected " + Days.words(corrected) + "; written " + Days.words(written) + " it read: "
                + was.stream().filter(words -> !words.isEmpty()).collect(Collectors.joining("; ")) + ".";
    }

    private static List<String> difference(Measure was, Measure after) {
        return List.of(
                differing("", was.title(), after.title()),
                differing("", was.figure(), after.figure()),
                differing("moment ", was.moment().words(), after.moment().words()),
                differing("method ", was.method(), after.method()),
                differing("air ", was.air().words(), after.air().words()),
                differing("measured ", Days.words(was.takenAt()), Days.words(after.takenAt())),
                differing("by ", was.hand(), after.hand()));
    }

    private static List<String> difference(Finding was, Finding after) {
        return List.of(
                differing("", was.title(), after.title()),
                differing("", FindingEntry.about(was), FindingEntry.about(after)),
                differing("observed ", was.observation(), after.observation()),
                differing("taken to mean ", was.interpretation(), after.interpretation()),
                differing("seen ", Days.words(was.seenAt()), Days.words(after.seenAt())),
                differing("by ", was.hand(), after.hand()));
    }

    private static String differing(String name, String was, String after) {
        return was.equals(after) ? "" : name + (was.isEmpty() ? "nothing" : was);
    }
}
