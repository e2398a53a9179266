package afterlength.workshop.examination;

import java.util.List;
import java.util.Locale;

/** Counts in words: "Seven findings", "one picture"; from thirteen on in figures. */
final class Counted {
    private static final List<String> SMALL = List.of(
            "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve");

    private Counted() {}

    /** To begin a sentence with. */
    static String words(int count, String one, String several) {
        String words = within(count, one, several);
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** Within a sentence. */
    static String within(int count, String one, String several) {
        return number(count) + " " + (count == 1 ? one : several);
    }

    static String number(int count) {
        return count < SMALL.size() ? SMALL.get(count) : Integer.toString(count);
    }
}
