package afterlength.start.document;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What was found wrong with one document so far, shared by everybody who reads in it. One place is refused once. */
final class Findings {
    private final List<Problem> problems = new ArrayList<>();
    private final Set<String> places = new LinkedHashSet<>();
    private final List<DocumentReader> objects = new ArrayList<>();

    void add(Problem problem) {
        if (places.add(problem.at())) {
            problems.add(problem);
        }
    }

    void opened(DocumentReader object) {
        objects.add(object);
    }

    /** Everything found, and behind it the keys that nobody asked for. */
    List<Problem> all() {
        List<Problem> all = new ArrayList<>(problems);
        objects.forEach(object -> all.addAll(object.unknownKeys()));
        return List.copyOf(all);
    }
}
