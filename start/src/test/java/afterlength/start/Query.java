package afterlength.start;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Fields of a form that is sent in its address. */
final class Query {
    private Query() {}

    static String of(String address, List<Map.Entry<String, String>> fields) {
        return (address.contains("?") ? "&" : "?") + body(fields);
    }

    /** The same fields as the body of a form. */
    static String body(List<Map.Entry<String, String>> fields) {
        return fields.stream()
                .map(field -> encoded(field.getKey()) + "=" + encoded(field.getValue()))
                .collect(Collectors.joining("&"));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
