package afterlength.workshop.retouch;

import java.util.stream.Collectors;

/** What was laid, in one line. */
final class CoatWords {
    private CoatWords() {}

    /** "0.62 coats amber, 0.31 coats red lake". */
    static String of(RetouchCase one, LaidCoat coat) {
        return coat.parts().stream()
                .map(part -> RetouchWords.coats(part.coats()) + " "
                        + one.colour(Long.toString(part.colourId())).name())
                .collect(Collectors.joining(", "));
    }
}
