package afterlength.start.document;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What was found wrong with one document so far, shared by everybody who reads in it. What lies at or under a place
 * that was refused is not refused again: a missing object does not lack every key it would have held.
 */
final class Findings {
    private final List<Problem> problems = new ArrayList<>();
    private final Set<String> places = new LinkedHashSet<>();
    private final List<DocumentReader> objects = new ArrayList<>();

    void add(Problem problem) {
        if (places.stream().noneMatch(place -> lies(problem.at(), place))) {
            places.add(problem.at());
            problems.add(problem);
        }
    }

    private static boolean lies(String at, String place) {
        return at.equals(place) || at.startsWith(place + "/");
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
