package afterlength.workshop.examination;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * One thing with all its wordings, the first one first. The last entry holds, unless it is a withdrawal; a withdrawal keeps the
 * words that it withdrew, so that it can be taken back.
 */
public record History<W extends Written>(List<W> entries) {
    public History {
        entries = List.copyOf(entries);
        if (entries.isEmpty()) {
            throw new IllegalArgumentException("a history has at least its first entry");
        }
    }

    /**
     * Sorts entries into histories, in the order in which their first entries were written.
     *
     * @param entries in the order of writing, so that what is replaced stands before what replaces it
     */
    static <W extends Written> List<History<W>> of(List<W> entries) {
        Map<Long, List<W>> byLatest = new LinkedHashMap<>();
        List<List<W>> histories = new ArrayList<>();
        for (W entry : entries) {
            List<W> history = entry.replaces() == null ? null : byLatest.remove(entry.replaces());
            if (history == null) {
                history = new ArrayList<>();
                histories.add(history);
            }
            history.add(entry);
            byLatest.put(entry.id(), history);
        }
        return histories.stream().map(History::new).toList();
    }

    public W latest() {
        return entries.get(entries.size() - 1);
    }

    /** What was written before the latest, the newest first, without the withdrawals among them. */
    public List<W> earlier() {
        List<W> earlier = new ArrayList<>();
        for (int n = entries.size() - 2; n >= 0; n--) {
            if (!entries.get(n).withdrawn()) {
                earlier.add(entries.get(n));
            }
        }
        return earlier;
    }

    /** Of the earlier ones, the newest first, those that say something else than the one after them. */
    static <W extends Written> List<W> differing(W latest, List<W> earlier, UnaryOperator<W> words) {
        List<W> differing = new ArrayList<>();
        W after = latest;
        for (W before : earlier) {
            if (!words.apply(before).equals(words.apply(after))) {
                differing.add(before);
            }
            after = before;
        }
        return differing;
    }

    public boolean holds() {
        return !latest().withdrawn();
    }

    boolean contains(long id) {
        return entries.stream().anyMatch(entry -> entry.id() == id);
    }
}
