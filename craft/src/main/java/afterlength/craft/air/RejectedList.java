package afterlength.craft.air;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Collects every rejected row. Rows one after another with the same fault make one entry, so that a million equal faults stay one
 * line; a file in which faults alternate more often than {@value #MOST_ENTRIES} times is not laid out as was said, and reading
 * stops.
 */
final class RejectedList {
    static final int MOST_ENTRIES = 10_000;

    private final List<RejectedRows> entries = new ArrayList<>();

    void add(int line, RowFault fault, String text) {
        RejectedRows last = entries.isEmpty() ? null : entries.get(entries.size() - 1);
        if (last != null && last.fault() == fault && last.lastLine() == line - 1) {
            entries.set(entries.size() - 1, new RejectedRows(last.firstLine(), line, fault, last.firstText()));
        } else {
            entries.add(new RejectedRows(line, line, fault, shortened(text)));
        }
    }

    boolean isFull() {
        return entries.size() >= MOST_ENTRIES;
    }

    List<RejectedRows> with(RejectedList others) {
        List<RejectedRows> all = new ArrayList<>(entries);
        all.addAll(others.entries);
        all.sort(Comparator.comparingInt(RejectedRows::firstLine));
        return List.copyOf(all);
    }

    private static String shortened(String text) {
        String shown = text.codePoints()
                .limit(RejectedRows.LONGEST_TEXT)
                .map(letter -> Character.isISOControl(letter) || Character.getType(letter) == Character.SURROGATE
                        ? ' '
                        : letter)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return shown.length() < text.length() ? shown + "…" : shown;
    }
}
