package afterlength.start.document;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * The known word nearest to a mistyped one, by the number of letters to insert, delete or change (Levenshtein's distance,
 * docs/sources.md#levenshtein-1966), capitals aside. Two letters may be wrong, or a third of them, but never all; more is another word.
 */
final class NearestWord {
    /** No key or name is longer, and the work grows with the square. */
    private static final int LONGEST = 60;

    private NearestWord() {}

    static Optional<String> find(String typed, Collection<String> known) {
        if (typed.length() > LONGEST) {
            return Optional.empty();
        }
        return known.stream()
                .filter(word -> isNear(typed, word))
                .min(Comparator.comparingInt(word -> distance(typed, word)));
    }

    private static boolean isNear(String typed, String word) {
        int wrong = distance(typed, word);
        int longer = Math.max(typed.length(), word.length());
        return wrong <= Math.max(2, longer / 3) && wrong < Math.min(typed.length(), word.length());
    }

    private static int distance(String typed, String word) {
        String from = typed.toLowerCase(Locale.ROOT);
        String to = word.toLowerCase(Locale.ROOT);
        int[] row = new int[to.length() + 1];
        for (int column = 0; column < row.length; column++) {
            row[column] = column;
        }
        for (int line = 1; line <= from.length(); line++) {
            int diagonal = row[0];
            row[0] = line;
            for (int column = 1; column < row.length; column++) {
                int changed = diagonal + (from.charAt(line - 1) == to.charAt(column - 1) ? 0 : 1);
                diagonal = row[column];
                row[column] = Math.min(changed, 1 + Math.min(row[column], row[column - 1]));
            }
        }
        return row[to.length()];
    }
}
