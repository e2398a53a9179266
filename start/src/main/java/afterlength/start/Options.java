package afterlength.start;

import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The options of a command, such as {@code --shop FOLDER --no-browser}; everything that is wrong with them at once. */
final class Options {
    private final Map<String, String> given = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private Options() {}

    /** Reads arguments; the first set takes a value each, the second stands alone. */
    static Options read(List<String> arguments, Set<String> withValue, Set<String> alone) {
        Options options = new Options();
        for (int n = 0; n < arguments.size(); n++) {
            String option = arguments.get(n);
            if (alone.contains(option)) {
                options.given.put(option, "");
            } else if (!withValue.contains(option)) {
                options.note(option, "There is no option \"" + option + "\". Type --help to see what there is.");
            } else if (n + 1 == arguments.size()) {
                options.note(option, "The option " + option + " wants a value behind it.");
            } else {
                options.given.put(option, arguments.get(++n));
            }
        }
        return options;
    }

    boolean has(String option) {
        return given.containsKey(option);
    }

    Optional<String> find(String option) {
        return Optional.ofNullable(given.get(option));
    }

    /** A port, or the usual one. */
    int port(int usual) {
        String text = given.getOrDefault("--port", Integer.toString(usual));
        if (text.matches("\\d{1,5}") && Integer.parseInt(text) <= 65535) {
            return Integer.parseInt(text);
        }
        note(text, "The port is \"" + text + "\"; allowed is a whole number from 0 (any free one) to 65535.");
        return usual;
    }

    List<Problem> problems() {
        return List.copyOf(problems);
    }

    private void note(String value, String message) {
        problems.add(new Problem("", value, message));
    }
}
