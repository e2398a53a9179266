package afterlength.workshop.examination;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds words that compare with something only the writer has in mind: a "small" crack may be 5 or 50 mm long. Another reader,
 * ten years on, needs the extent. It is a note beside the words and never keeps them from being saved. The idea:
 * docs/sources.md#condition-report-words; the list is ours and English only.
 */
final class RelativeWords {
    private static final Pattern WORD = Pattern.compile("[\\p{L}-]+");
    private static final Set<String> RELATIVE = Set.of(
            "bad",
            "badly",
            "big",
            "considerable",
            "enormous",
            "extensive",
            "few",
            "good",
            "great",
            "heavily",
            "heavy",
            "huge",
            "large",
            "light",
            "lightly",
            "little",
            "major",
            "massive",
            "mild",
            "minor",
            "moderate",
            "numerous",
            "poor",
            "poorly",
            "serious",
            "severe",
            "severely",
            "short",
            "slight",
            "slightly",
            "small",
            "some",
            "substantial",
            "terrible",
            "tiny");

    private RelativeWords() {}

    /** Each such word once, in the order of reading. */
    static List<String> in(String... texts) {
        return Stream.of(texts)
                .flatMap(text ->
                        WORD.matcher(text.toLowerCase(Locale.ROOT)).results().map(java.util.regex.MatchResult::group))
                .filter(RELATIVE::contains)
                .distinct()
                .toList();
    }
}
