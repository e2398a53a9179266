package afterlength.start.document;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A value as it was given, put into a sentence or into a problem: short, whatever was sent. */
final class Given {
    private static final int LONGEST_TEXT = 80;

    private Given() {}

    /** What kind of thing stands there, for a sentence. */
    static String spoken(@Nullable Object value) {
        if (value == null) {
            return "null";
        } else if (value instanceof String text) {
            return "the text \"" + shortened(text) + "\"";
        } else if (value instanceof Number number) {
            return "the number " + Figure.given(number.doubleValue());
        } else if (value instanceof Boolean) {
            return value.toString();
        }
        return value instanceof List ? "a list" : "an object";
    }

    /** The value for a problem: as it was given, or described where it is long. */
    static @Nullable Object inProblem(@Nullable Object value) {
        if (value instanceof String text) {
            return shortened(text);
        } else if (value instanceof List<?> list && isLong(list)) {
            return "a list of " + list.size();
        } else if (value instanceof Map<?, ?> object && isLong(object)) {
            return "an object with keys: " + object.size();
        } else if (value instanceof Double number) {
            return Figure.inProblem(number);
        }
        return value;
    }

    private static boolean isLong(Object listOrObject) {
        return listOrObject.toString().length() > LONGEST_TEXT;
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_TEXT ? text : text.substring(0, LONGEST_TEXT) + "…";
    }
}
