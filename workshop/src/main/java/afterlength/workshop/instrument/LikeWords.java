package afterlength.workshop.instrument;

import java.util.stream.Collectors;

/** Words that somebody looks for, as the database compares them. */
final class LikeWords {
    private LikeWords() {}

    /**
     * For {@code LIKE … ESCAPE '!'}. The database knows capitals of a to z only, so that any other letter that has one may be any
     * letter.
     */
    static String pattern(String word) {
        return word.replaceAll("([!%_])", "!$1")
                .codePoints()
                .mapToObj(letter -> letter > 127 && Character.toLowerCase(letter) != Character.toUpperCase(letter)
                        ? "_"
                        : Character.toString(letter))
                .collect(Collectors.joining());
    }
}
