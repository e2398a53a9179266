package afterlength.start.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** An answer in the making. Keys stand in the order they were put, numbers are rounded as {@link Figure} does. */
public final class AnswerDocument {
    private final Map<String, @Nullable Object> fields = new LinkedHashMap<>();

    public AnswerDocument put(String key, double value) {
        fields.put(key, Figure.rounded(value));
        return this;
    }

    /** The number of a quantity, or null where there is none. */
    public <T> AnswerDocument put(String key, Optional<T> quantity, ToDoubleFunction<T> number) {
        fields.put(
                key,
                quantity.map(value -> Figure.rounded(number.applyAsDouble(value)))
                        .orElse(null));
        return this;
    }

    public AnswerDocument putNumbers(String key, List<Double> numbers) {
        fields.put(key, numbers.stream().map(Figure::rounded).toList());
        return this;
    }

    public AnswerDocument put(String key, String text) {
        fields.put(key, text);
        return this;
    }

    /** The text, or null where there is none. */
    public AnswerDocument putText(String key, Optional<String> text) {
        fields.put(key, text.orElse(null));
        return this;
    }

    public AnswerDocument put(String key, AnswerDocument object) {
        fields.put(key, object.fields);
        return this;
    }

    public AnswerDocument put(String key, boolean value) {
        fields.put(key, value);
        return this;
    }

    /** The object, or null where there is none. */
    public AnswerDocument putObject(String key, Optional<AnswerDocument> object) {
        fields.put(key, object.map(present -> present.fields).orElse(null));
        return this;
    }

    /** Rows of numbers, such as points of a curve. */
    public AnswerDocument putRows(String key, List<List<Double>> rows) {
        fields.put(
                key,
                rows.stream()
                        .map(row -> row.stream().map(Figure::rounded).toList())
                        .toList());
        return this;
    }

    public AnswerDocument putTexts(String key, List<String> texts) {
        fields.put(key, texts);
        return this;
    }

    public AnswerDocument putWhole(String key, List<Integer> numbers) {
        fields.put(key, numbers);
        return this;
    }

    public AnswerDocument putWholeRows(String key, List<List<Integer>> rows) {
        fields.put(key, rows);
        return this;
    }

    public AnswerDocument putObjects(String key, List<AnswerDocument> objects) {
        fields.put(key, objects.stream().map(object -> object.fields).toList());
        return this;
    }

    Map<String, @Nullable Object> fields() {
        return fields;
    }
}
