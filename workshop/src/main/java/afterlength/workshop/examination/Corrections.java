package afterlength.workshop.examination;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Which findings and measures on a paper were corrected, and how they read before. Each gets a mark, {@code c1}, {@code c2} …, that
 * stands behind the valid wording and again before the earlier ones; withdrawn entries are only counted.
 *
 * @param withdrawn how many entries of the visit were withdrawn and stand on no paper
 */
public record Corrections(Map<Written, Note> notes, long withdrawn) {
    /** A mark and what stands behind it. */
    public record Note(String mark, String words) {}

    static Corrections of(List<History<Finding>> findings, List<History<Measure>> measures) {
        Map<Written, Note> notes = new LinkedHashMap<>();
        findings.stream()
                .filter(History::holds)
                .forEach(history -> put(
                        notes,
                        history.latest(),
                        CorrectionWords.findings(
                                history.latest(),
                                History.differing(history.latest(), history.earlier(), Finding::words))));
        measures.stream()
                .filter(History::holds)
                .forEach(history -> put(
                        notes,
                        history.latest(),
                        CorrectionWords.measures(
                                history.latest(),
                                History.differing(history.latest(), history.earlier(), Measure::words))));
        long withdrawn = findings.stream().filter(history -> !history.holds()).count()
                + measures.stream().filter(history -> !history.holds()).count();
        return new Corrections(notes, withdrawn);
    }

    private static void put(Map<Written, Note> notes, Written latest, String words) {
        if (!words.isEmpty()) {
            notes.put(latest, new Note("c" + (notes.size() + 1), words));
        }
    }

    /** The mark behind an entry; empty when it was never corrected. */
    public String mark(Written entry) {
        Note note = notes.get(entry);
        return note == null ? "" : note.mark();
    }

    /** The notes of what stands in one table, in its order. */
    public List<Note> listOf(List<? extends Written> entries) {
        List<Note> found = new ArrayList<>();
        entries.stream().map(notes::get).filter(note -> note != null).distinct().forEach(found::add);
        return found;
    }

    /** What stands at the end of a paper about entries that do not; empty when there are none. */
    public String withdrawnWords() {
        return switch ((int) Math.min(withdrawn, 2)) {
            case 0 -> "";
            case 1 -> "One entry was withdrawn; it stays in the record and does not stand here.";
            default -> withdrawn + " entries were withdrawn; they stay in the record and do not stand here.";
        };
    }
}
