package afterlength.workshop.advice;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One comparison of a fact with a value: {@code age=OLD}, {@code size_mm<=30}. */
record Condition(String fact, String sign, String value) {
    private static final Pattern WRITTEN = Pattern.compile("([a-z_]+)\\s*(<=|>|=)\\s*(\\S+)");

    Condition {
        if (!Facts.WORDS.containsKey(fact)) {
            throw new IllegalArgumentException("no fact is called '" + fact + "'; known are "
                    + Facts.WORDS.keySet().stream().sorted().toList());
        }
    }

    /** Reads conditions joined by {@code &}; none at all always holds. */
    static List<Condition> list(String text) {
        return text.isBlank()
                ? List.of()
                : Arrays.stream(text.split("&")).map(Condition::of).toList();
    }

    private static Condition of(String text) {
        Matcher matcher = WRITTEN.matcher(text.strip());
        if (!matcher.matches()) {
            throw new IllegalArgumentException(
                    "'" + text + "' is no condition; write a fact, one of = <= > and a value, such as size_mm<=30");
        }
        return new Condition(matcher.group(1), matcher.group(2), matcher.group(3));
    }

    Holds in(Facts facts) {
        return facts.find(fact)
                .map(known -> meets(known) ? Holds.YES : Holds.NO)
                .orElse(Holds.UNKNOWN);
    }

    private boolean meets(String known) {
        if (sign.equals("=")) {
            return known.equals(value);
        }
        int order = new BigDecimal(known).compareTo(new BigDecimal(value));
        return sign.equals(">") ? order > 0 : order <= 0;
    }

    /** What somebody would have to look at. */
    String question() {
        return Facts.WORDS.getOrDefault(fact, fact);
    }
}
