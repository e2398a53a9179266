package afterlength.craft.units;

import org.jspecify.annotations.Nullable;

/**
 * One thing that is wrong with what was given. The text says what, the value, what is allowed and what to do; the place is a
 * JSON pointer into the question, such as {@code /board_end_clearance_mm/bass}. A page and a command line document use the same
 * names, so the same problem stands beside a field or in the answer of a verb.
 *
 * @param at JSON pointer to the value
 * @param value the value as given, or null when it is missing
 * @param message a whole sentence in plain words
 */
public record Problem(String at, @Nullable Object value, String message) {}
