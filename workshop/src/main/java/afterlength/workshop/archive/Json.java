package afterlength.workshop.archive;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * JSON out of maps, lists, texts, numbers and truths, indented so that a person can read it. A member that holds nothing, an empty
 * text or an empty list is left out.
 */
final class Json {
    private static final String STEP = " ";

    private Json() {}

    /** Name and value in turn. */
    static Map<String, Object> object(@Nullable Object... members) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int n = 0; n < members.length; n += 2) {
            Object value = members[n + 1];
            if (value != null && !value.equals("") && !value.equals(List.of())) {
                object.put(String.valueOf(members[n]), value);
            }
        }
        return object;
    }

    static String text(Object value) {
        return text(value, "") + "\n";
    }

    private static String text(Object value, String indent) {
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream()
                    .map(member -> quoted(String.valueOf(member.getKey())) + ": "
                            + text(String.valueOf(member.getKey()), member.getValue(), indent + STEP))
                    .collect(around("{", "}", indent));
        }
        if (value instanceof List<?> list) {
            return list.stream().map(item -> text(item, indent + STEP)).collect(around("[", "]", indent));
        }
        return value instanceof Number || value instanceof Boolean ? value.toString() : quoted(String.valueOf(value));
    }

    private static String text(String name, @Nullable Object value, String indent) {
        if (value == null) {
            throw new IllegalArgumentException("the member " + name + " holds nothing");
        }
        return text(value, indent);
    }

    private static java.util.stream.Collector<CharSequence, ?, String> around(
            String open, String close, String indent) {
        return Collectors.joining(",\n" + indent + STEP, open + "\n" + indent + STEP, "\n" + indent + close);
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (int at = 0; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (c < ' ') {
                quoted.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }
}
