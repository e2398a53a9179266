package afterlength.start.document;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Reads one object of a document key by key and collects what is wrong, so that a person learns everything at once. A key that
 * nobody asked for is a problem too; therefore ask for every key the object may hold, and ask {@link #problems} last. Where a
 * value could not be read a harmless stand-in is returned (see {@link DocumentValue}); it must not be counted with while there
 * are problems.
 */
public final class DocumentReader {
    private final String pointer;
    private final Map<?, ? extends @Nullable Object> fields;
    private final boolean absent;
    private final Findings findings;
    private final Set<String> asked = new LinkedHashSet<>();

    DocumentReader(String pointer, Map<?, ? extends @Nullable Object> fields, boolean absent, Findings findings) {
        this.pointer = pointer;
        this.fields = fields;
        this.absent = absent;
        this.findings = findings;
        findings.opened(this);
    }

    /** Opens the document that these bytes hold; if they hold none, the reader knows the reason already. */
    public static DocumentReader of(byte[] utf8) {
        List<Problem> problems = new ArrayList<>();
        Object whole = read(utf8, problems);
        Findings findings = new Findings();
        problems.forEach(findings::add);
        boolean unreadable = problems.stream().anyMatch(problem -> problem.at().equals(Pointer.WHOLE_DOCUMENT));
        return unreadable
                ? new DocumentReader(Pointer.WHOLE_DOCUMENT, Map.of(), true, findings)
                : new DocumentValue(Pointer.WHOLE_DOCUMENT, whole, findings).asObject();
    }

    private static @Nullable Object read(byte[] utf8, List<Problem> problems) {
        Optional<String> text = JsonText.findText(utf8);
        if (text.isPresent()) {
            return JsonTree.read(text.get(), problems);
        }
        problems.add(new Problem(
                Pointer.WHOLE_DOCUMENT,
                null,
                "The document is not text in UTF-8. Save it as UTF-8 and send it again."));
        return null;
    }

    /** The value of a key that must be there. */
    public DocumentValue get(String key) {
        asked.add(key);
        String place = Pointer.child(pointer, key);
        if (fields.containsKey(key)) {
            return new DocumentValue(place, fields.get(key), findings);
        }
        if (!absent) {
            findings.add(new Problem(
                    place, null, Pointer.spoken(place) + " is missing. Add the key \"" + key + "\" and its value."));
        }
        return DocumentValue.absent(place, findings);
    }

    /** The value of a key that may be left out. */
    public Optional<DocumentValue> find(String key) {
        asked.add(key);
        return fields.containsKey(key) ? Optional.of(get(key)) : Optional.empty();
    }

    /** Whether at least one of these keys is there; all of them may be left out. */
    public boolean hasAny(String... keys) {
        asked.addAll(List.of(keys));
        return Stream.of(keys).anyMatch(fields::containsKey);
    }

    /** All keys that are there, for an object whose keys are names. */
    public List<String> keys() {
        return fields.keySet().stream().map(String::valueOf).toList();
    }

    /** Notes a problem that the reader cannot see by itself; {@code at} is relative to this object, such as {@code /cut}. */
    public void refuse(String at, @Nullable Object value, String message) {
        findings.add(new Problem(pointer + at, value, message));
    }

    public void refuseAll(List<Problem> problems) {
        problems.forEach(problem -> refuse(problem.at(), problem.value(), problem.message()));
    }

    /** Everything wrong with the whole document. */
    public List<Problem> problems() {
        return findings.all();
    }

    public boolean hasProblems() {
        return !problems().isEmpty();
    }

    List<Problem> unknownKeys() {
        return keys().stream()
                .filter(key -> !asked.contains(key))
                .map(key -> new Problem(Pointer.child(pointer, key), Given.inProblem(fields.get(key)), unknown(key)))
                .toList();
    }

    private String unknown(String key) {
        String quoted = (String) Given.inProblem(key);
        return Pointer.spoken(pointer) + " has no key \"" + quoted + "\". "
                + NearestWord.find(key, asked)
                        .map(word -> "Did you mean \"" + word + "\"? ")
                        .orElse("")
                + "Keys known here: " + String.join(", ", asked) + ".";
    }
}
