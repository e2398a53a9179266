package afterlength.workshop.ledger;

import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/**
 * Words of a person in every text of a shop, whatever table it stands in: found, or replaced. Capitals do not matter. A word of five
 * letters or more is found inside a longer one too, so that “Berger” is in “Bergers”; a shorter one only by itself. Left out: the
 * shop's own settings, names and addresses of owners (who may share a name), columns that hold fixed words of the program, outlines of
 * marks.
 */
public final class WordSweep {
    /** What stands in their place. */
    public static final String INSTEAD = "[erased]";

    private static final int FOUND_INSIDE_FROM = 5;
    /** The database takes no condition of 1000 terms; with more words than this every text is looked at. */
    private static final int MOST_LIKENESSES = 100;

    private final Handle handle;
    private final Pattern pattern;
    private final List<String> likenesses;

    private WordSweep(Handle handle, List<String> words) {
        this.handle = handle;
        pattern = pattern(words);
        likenesses = words.size() > MOST_LIKENESSES
                ? List.of("%")
                : words.stream().map(WordSweep::likeness).distinct().toList();
    }

    /** A text that holds one of the words. */
    public record Found(String table, String column, long row, String before, String after) {}

    /** Texts that would change. */
    public static List<Found> look(Handle handle, List<String> words) {
        return words.isEmpty() ? List.of() : new WordSweep(handle, words).found();
    }

    /** Changes them, inside the door of history, and answers how many texts there were. */
    public static int replace(Handle handle, List<String> words) {
        List<Found> found = look(handle, words);
        for (Found text : found) {
            handle.createUpdate("UPDATE " + Table.quoted(text.table()) + " SET " + Table.quoted(text.column())
                            + " = :after WHERE rowid = :row")
                    .bind("after", text.after())
                    .bind("row", text.row())
                    .execute();
        }
        return found.size();
    }

    /** A text without the words, each replaced by the same other one. */
    public static String without(String text, List<String> words, String instead) {
        return words.isEmpty() ? text : pattern(words).matcher(text).replaceAll(Matcher.quoteReplacement(instead));
    }

    private static Pattern pattern(List<String> words) {
        String any = words.stream()
                .sorted(Comparator.comparingInt(String::length).reversed())
                .map(WordSweep::expression)
                .collect(Collectors.joining("|"));
        return Pattern.compile(any, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    private static String expression(String word) {
        String quoted = Pattern.compile("\\s+")
                .splitAsStream(word.strip())
                .map(Pattern::quote)
                .collect(Collectors.joining("\\s+"));
        return word.length() >= FOUND_INSIDE_FROM
                ? "[\\p{L}\\p{N}]*" + quoted + "[\\p{L}\\p{N}]*"
                : "(?<![\\p{L}\\p{N}])" + quoted + "(?![\\p{L}\\p{N}])";
    }

    /**
     * What the database looks for before the exact pattern, many times as quick: every text with the word and perhaps others. It folds
     * only the 26 letters, so any other sign may be anything, and so may i, k and s, which are also the folded form of signs beyond them.
     */
    private static String likeness(String word) {
        String signs = word.strip()
                .replaceAll("\\s+", "%")
                .replaceAll("[^%a-zA-Z0-9 .,@-]", "_")
                .replaceAll("[iksIKS]", "_");
        return "%" + signs + "%";
    }

    private List<Found> found() {
        try {
            List<Found> found = new ArrayList<>();
            for (Table table : Tables.of(handle.getConnection())) {
                if (table.numbered() && !table.name().equals("setting")) {
                    table.textColumns().forEach(column -> look(table.name(), column, found));
                }
            }
            return found;
        } catch (SQLException broken) {
            throw new IllegalStateException("the tables cannot be read: " + broken.getMessage(), broken);
        }
    }

    private void look(String table, String column, List<Found> found) {
        boolean entryOfAnother = table.equals("owner") && !column.equals("remark");
        if (entryOfAnother || isCoded(table, column)) {
            return;
        }
        String like = IntStream.range(0, likenesses.size())
                .mapToObj(index -> "words LIKE :like" + index)
                .collect(Collectors.joining(" OR "));
        Query texts = handle.createQuery("SELECT rowid AS number, " + Table.quoted(column) + " AS words FROM "
                + Table.quoted(table) + " WHERE (" + like + ") AND words NOT LIKE '<svg%'");
        for (int index = 0; index < likenesses.size(); index++) {
            texts.bind("like" + index, likenesses.get(index));
        }
        texts.map((row, context) -> new Found(table, column, row.getLong("number"), row.getString("words"), ""))
                .forEach(text -> add(text, found));
    }

    private void add(Found text, List<Found> found) {
        Matcher matcher = pattern.matcher(text.before());
        if (matcher.find()) {
            found.add(new Found(
                    text.table(),
                    text.column(),
                    text.row(),
                    text.before(),
                    matcher.replaceAll(Matcher.quoteReplacement(INSTEAD))));
        }
    }

    /** Fixed words are capitals throughout the column; changing one would break its row. */
    private boolean isCoded(String table, String column) {
        return handle.createQuery("SELECT 1 FROM " + Table.quoted(table) + " WHERE " + Table.quoted(column)
                        + " GLOB '*[^A-Z0-9_]*' LIMIT 1")
                .mapTo(Integer.class)
                .findOne()
                .isEmpty();
    }
}
