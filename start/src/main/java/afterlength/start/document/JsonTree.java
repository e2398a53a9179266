package afterlength.start.document;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.databind.json.JsonMapper;

/**
 * One JSON text as maps, lists, texts, numbers and truth values. A key given twice and a number too large to count with are
 * noted and reading goes on; what is not JSON, or lies too deep, ends it.
 */
final class JsonTree {
    /** Our documents are four deep; a heap of brackets is no question. */
    private static final int DEEPEST = 32;

    private final JsonParser parser;
    private final List<Problem> problems;

    private JsonTree(JsonParser parser, List<Problem> problems) {
        this.parser = parser;
        this.problems = problems;
    }

    /** The value of the whole text; problems are added to the list. After an unreadable text there is none. */
    static @Nullable Object read(String text, List<Problem> problems) {
        if (text.isBlank()) {
            problems.add(ofWhole("The document is empty. Give one JSON object in braces."));
            return null;
        }
        try (JsonParser parser = JsonMapper.shared().createParser(text)) {
            return new JsonTree(parser, problems).whole();
        } catch (StreamConstraintsException tooLong) {
            problems.add(ofWhole(
                    "The document holds a number, a key or a text too long to read. Give numbers of at most 1000 digits, and"
                            + " short names."));
        } catch (JacksonException broken) {
            problems.add(notJson(broken.getLocation()));
        } catch (TooDeep deep) {
            problems.add(ofWhole("The document is nested more than " + DEEPEST + " deep. Give at most " + DEEPEST
                    + " brackets and braces inside each other."));
        }
        return null;
    }

    private @Nullable Object whole() {
        Object value = value(parser.nextToken(), Pointer.WHOLE_DOCUMENT, 0);
        if (parser.nextToken() != null) {
            problems.add(ofWhole("After the end of the document more text begins at "
                    + spoken(parser.currentTokenLocation()) + ". Give one document and nothing behind it."));
        }
        return value;
    }

    private @Nullable Object value(JsonToken token, String at, int depth) {
        if (depth > DEEPEST) {
            throw new TooDeep();
        }
        return switch (token) {
            case START_OBJECT -> object(at, depth);
            case START_ARRAY -> list(at, depth);
            case VALUE_STRING -> parser.getString();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(at);
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            default -> null;
        };
    }

    private Map<String, @Nullable Object> object(String at, int depth) {
        Map<String, @Nullable Object> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            String place = Pointer.child(at, key);
            Object value = value(parser.nextToken(), place, depth + 1);
            if (fields.containsKey(key)) {
                problems.add(new Problem(
                        place,
                        Given.inProblem(value),
                        Pointer.spoken(place) + " is given more than once. Give it once."));
            } else {
                fields.put(key, value);
            }
        }
        return fields;
    }

    private List<@Nullable Object> list(String at, int depth) {
        List<@Nullable Object> values = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            values.add(value(token, Pointer.child(at, values.size()), depth + 1));
        }
        return values;
    }

    /** NaN stands for a number that was already refused. */
    private Number number(String at) {
        Number number = parser.getNumberValue();
        if (Double.isFinite(number.doubleValue())) {
            return number;
        }
        problems.add(new Problem(
                at,
                Given.inProblem(parser.getString()),
                Pointer.spoken(at) + " is too large a number to count with. Give a number below 1e300."));
        return Double.NaN;
    }

    private static Problem notJson(@Nullable TokenStreamLocation location) {
        return ofWhole("The document is not JSON from " + spoken(location)
                + " on. Look there for a missing comma, quotation mark or"
                + " bracket; a number is written like 12.5, without unit, and NaN is not a number.");
    }

    private static Problem ofWhole(String message) {
        return new Problem(Pointer.WHOLE_DOCUMENT, null, message);
    }

    private static String spoken(@Nullable TokenStreamLocation location) {
        return location == null ? "its start" : "line " + location.getLineNr() + ", column " + location.getColumnNr();
    }

    /** Ends the reading from inside the nest; never leaves this class. */
    private static final class TooDeep extends RuntimeException {
        TooDeep() {
            super(null, null, false, false);
        }
    }
}
