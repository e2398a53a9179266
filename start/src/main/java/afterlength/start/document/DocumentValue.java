package afterlength.start.document;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * One value at one place of a document. Asking for what it is not notes a problem and returns a stand-in: NaN, an empty text, an
 * empty list, an object that complains of nothing further.
 */
public final class DocumentValue {
    /** Marks a value that was missing and is already refused. */
    private static final Object ABSENT = new Object();

    private static final int LONGEST_NAME = 200;

    private final String pointer;
    private final @Nullable Object value;
    private final Findings findings;

    DocumentValue(String pointer, @Nullable Object value, Findings findings) {
        this.pointer = pointer;
        this.value = value;
        this.findings = findings;
    }

    static DocumentValue absent(String pointer, Findings findings) {
        return new DocumentValue(pointer, ABSENT, findings);
    }

    public boolean isText() {
        return value instanceof String;
    }

    public boolean isNumber() {
        return value instanceof Number;
    }

    public boolean isObject() {
        return value instanceof Map;
    }

    /** The number, or NaN when there is none in the range. */
    public double asNumber(Range range) {
        if (!(value instanceof Number given)) {
            return wrong("a number is wanted, such as 12.5, without quotation marks and without unit", Double.NaN);
        }
        double number = given.doubleValue();
        if (!Double.isNaN(number) && !range.contains(number)) {
            findings.add(new Problem(pointer, value, range.refusal(Pointer.spoken(pointer), number)));
            return Double.NaN;
        }
        return number;
    }

    /** A whole number, or the low end of the range when there is none in it. */
    public int asWhole(int low, int high, String unit) {
        double number = asNumber(Range.between(low, high, unit));
        if (!Double.isNaN(number) && number != Math.rint(number)) {
            refuse("give a whole number.");
        }
        return Double.isNaN(number) ? low : (int) number;
    }

    /** True or false; false when it is neither. */
    public boolean asTruth() {
        return value instanceof Boolean truth
                ? truth
                : wrong("true or false is wanted, without quotation marks", false);
    }

    /** A short text that says something. */
    public String asText() {
        if (!(value instanceof String text)) {
            return wrong("a text in quotation marks is wanted", "");
        }
        if (text.isBlank() || text.length() > LONGEST_NAME) {
            return wrong("a text of 1 to " + LONGEST_NAME + " characters is wanted", text);
        }
        return text;
    }

    /** The one of these that goes by the given word; capitals do not matter. */
    public <T> Optional<T> asOneOf(List<T> permitted, Function<T, String> word) {
        String text = value instanceof String given ? given.strip() : "";
        Optional<T> found = permitted.stream()
                .filter(candidate -> word.apply(candidate).equalsIgnoreCase(text))
                .findFirst();
        if (found.isEmpty()) {
            List<String> words = permitted.stream().map(word).toList();
            String meant = NearestWord.find(text, words)
                    .map(nearest -> " Did you mean \"" + nearest + "\"?")
                    .orElse("");
            refuse("give one of: " + String.join(", ", words) + "." + meant);
        }
        return found;
    }

    public DocumentReader asObject() {
        return value instanceof Map<?, ?> fields
                ? new DocumentReader(pointer, fields, false, findings)
                : wrong("an object in braces is wanted", new DocumentReader(pointer, Map.of(), true, findings));
    }

    public List<DocumentValue> asList(int least, int most) {
        if (!(value instanceof List<?> list)) {
            return wrong("a list in square brackets is wanted", List.of());
        }
        if (list.size() < least || list.size() > most) {
            return wrong("a list of " + count(least, most) + " is wanted, this one has " + list.size(), List.of());
        }
        List<DocumentValue> values = new ArrayList<>();
        for (int index = 0; index < list.size(); index++) {
            values.add(new DocumentValue(Pointer.child(pointer, index), list.get(index), findings));
        }
        return values;
    }

    private static String count(int least, int most) {
        return least == most ? Integer.toString(least) : least + " to " + most;
    }

    private <T> T wrong(String wanted, T standIn) {
        refuse(wanted + ".");
        return standIn;
    }

    private void refuse(String whatToDo) {
        if (value != ABSENT) {
            String is = Pointer.spoken(pointer) + " is " + Given.spoken(value);
            findings.add(new Problem(pointer, Given.inProblem(value), is + "; " + whatToDo));
        }
    }
}
