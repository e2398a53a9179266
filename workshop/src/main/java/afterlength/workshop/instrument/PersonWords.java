package afterlength.workshop.instrument;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The words by which an owner may stand in any text: the name and its parts, the addresses, the telephone. Offered, to be edited. */
public final class PersonWords {
    static final int SHORTEST = 3;

    private PersonWords() {}

    public static List<String> of(Owner owner) {
        Set<String> words = new LinkedHashSet<>();
        String name = owner.name().replaceAll("\\([^)]*\\)", " ").strip();
        words.add(owner.name().strip());
        Arrays.stream(name.split("[\\s,;]+", -1)).forEach(words::add);
        words.add(owner.email().strip());
        words.add(owner.phone().strip());
        words.add(owner.phone().replaceAll("[^0-9]", ""));
        owner.address().lines().map(String::strip).forEach(words::add);
        return words.stream().filter(word -> word.length() >= SHORTEST).toList();
    }

    /** One word or phrase a line; lines that are too short to mean a person are left out. */
    public static List<String> read(String text) {
        return text.lines()
                .map(String::strip)
                .filter(word -> word.length() >= SHORTEST)
                .distinct()
                .toList();
    }
}
