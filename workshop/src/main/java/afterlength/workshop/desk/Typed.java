package afterlength.workshop.desk;

import afterlength.craft.units.Problem;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * What a person typed into a form, kept to the letter, together with every problem found while reading it. A reader answers
 * null (or an empty text) where a problem was noted; the caller asks {@link #sound()} before using what it read.
 */
public final class Typed {
    private final Map<String, List<String>> values;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Standing> standings = new ArrayList<>();

    private Typed(Map<String, List<String>> values) {
        this.values = values;
    }

    public static Typed from(Context context) {
        return new Typed(new LinkedHashMap<>(context.formParamMap()));
    }

    /** A form not yet filled in, apart from what is already known. */
    public static Typed known(Map<String, String> values) {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        values.forEach((name, value) -> lists.put(name, List.of(value)));
        return new Typed(lists);
    }

    /** The same where a field can hold several values. */
    public static Typed knownAll(Map<String, List<String>> values) {
        return new Typed(new LinkedHashMap<>(values));
    }

    /** The first value of every field, to fill another form with. */
    public Map<String, String> everything() {
        Map<String, String> all = new LinkedHashMap<>();
        values.forEach((name, list) -> all.put(name, list.isEmpty() ? "" : list.get(0)));
        return all;
    }

    /** The same form with some fields filled otherwise. */
    public Typed changed(Map<String, String> fields) {
        Map<String, List<String>> all = new LinkedHashMap<>(values);
        fields.forEach((name, value) -> all.put(name, List.of(value)));
        return new Typed(all);
    }

    /** The same values, to be read once more, without the problems noted so far. */
    public Typed again() {
        return new Typed(values);
    }

    public static Typed empty() {
        return new Typed(new LinkedHashMap<>());
    }

    /** The value as typed, empty when the field was not sent. */
    public String raw(String name) {
        List<String> all = values.getOrDefault(name, List.of());
        return all.isEmpty() ? "" : all.get(0);
    }

    public List<String> all(String name) {
        return values.getOrDefault(name, List.of());
    }

    public boolean ticked(String name, String value) {
        return all(name).contains(value);
    }

    public String text(String name, String label, int longest) {
        String text = raw(name).strip().replace("\r\n", "\n");
        if (text.length() > longest) {
            note(name, label + " has " + text.length() + " characters; at most " + longest + " fit. Shorten it.");
        }
        if (text.chars().anyMatch(c -> c < ' ' && c != '\n' && c != '\t')) {
            note(name, label + " holds a control character that cannot be printed. Type it anew.");
        }
        return text;
    }

    public String required(String name, String label, int longest) {
        String text = text(name, label, longest);
        if (text.isEmpty()) {
            note(name, label + " is empty. Write a few words.");
        }
        return text;
    }

    /** A number that may be left out; both decimal signs are read. */
    public @Nullable Double decimal(String name, String label, String unit, double lowest, double highest) {
        String text = raw(name).strip();
        return text.isEmpty() ? null : number(name, text, label, unit, lowest, highest);
    }

    /** A number that must be there; NaN when a problem was noted. */
    public double requiredDecimal(String name, String label, String unit, double lowest, double highest) {
        Double value = number(name, raw(name).strip(), label, unit, lowest, highest);
        return value == null ? Double.NaN : value;
    }

    private @Nullable Double number(
            String name, String text, String label, String unit, double lowest, double highest) {
        OptionalDouble value = DecimalText.read(text);
        String range = Figures.plain(lowest) + " to " + Figures.plain(highest) + (unit.isEmpty() ? "" : " " + unit);
        if (value.isEmpty()) {
            note(
                    name,
                    label + " is " + quoted(text) + ", which is not a number. Allowed is " + range
                            + ", such as 12.5 or 12,5.");
            return null;
        }
        if (value.getAsDouble() < lowest || value.getAsDouble() > highest) {
            note(name, label + " is " + text + "; allowed is " + range + ".");
            return null;
        }
        return value.getAsDouble();
    }

    public @Nullable Integer whole(String name, String label, int lowest, int highest) {
        String text = raw(name).strip();
        if (text.isEmpty()) {
            return null;
        }
        if (!text.matches("-?\\d{1,9}") || Integer.parseInt(text) < lowest || Integer.parseInt(text) > highest) {
            note(
                    name,
                    label + " is " + quoted(text) + "; allowed is a whole number from " + lowest + " to " + highest
                            + ".");
            return null;
        }
        return Integer.valueOf(text);
    }

    public @Nullable LocalDate date(String name, String label) {
        String text = raw(name).strip();
        if (text.isEmpty()) {
            return null;
        }
        try {
            LocalDate date = LocalDate.parse(text);
            if (date.getYear() < 1500 || date.getYear() > 2200) {
                note(name, label + " is " + text + "; allowed are the years 1500 to 2200.");
            }
            return date;
        } catch (DateTimeParseException e) {
            note(name, label + " is " + quoted(text) + ", which is no date. Write year-month-day, such as 2026-03-14.");
            return null;
        }
    }

    public <E extends Enum<E>> @Nullable E choice(String name, String label, Class<E> kind) {
        String text = raw(name).strip();
        for (E choice : kind.getEnumConstants()) {
            if (choice.name().equals(text)) {
                return choice;
            }
        }
        String allowed = Arrays.stream(kind.getEnumConstants())
                .map(choice -> choice.name().toLowerCase(java.util.Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(", "));
        note(
                name,
                label + (text.isEmpty() ? " is not chosen" : " is " + quoted(text)) + "; choose one of: " + allowed
                        + ".");
        return null;
    }

    /** Puts another value into a field that no person typed. */
    void renew(String name, String value) {
        values.put(name, List.of(value));
    }

    /** Remembers what is stored by now, for each of these fields in which something else was typed. */
    void standsNow(Map<String, String> stored) {
        new TreeMap<>(stored).forEach((name, now) -> {
            String mine = raw(name).strip().replace("\r\n", "\n");
            if (!mine.equals(now.strip()) && !name.equals("version")) {
                standings.add(new Standing(name, now, mine));
            }
        });
    }

    /** Where somebody else's value stands by now; empty when nobody came in between. */
    public List<Standing> standings() {
        return List.copyOf(standings);
    }

    /** Notes a problem beside a field. */
    public void note(String name, String message) {
        problems.add(new Problem("/" + name, raw(name), message));
    }

    /** Notes problems found by the arithmetic; their places are the names of the fields. */
    public void note(List<Problem> found) {
        problems.addAll(found);
    }

    public boolean sound() {
        return problems.isEmpty();
    }

    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    /** The first problem beside a field. */
    public Optional<String> problem(String name) {
        return problems.stream()
                .filter(p -> p.at().equals("/" + name))
                .map(Problem::message)
                .findFirst();
    }

    private static String quoted(String text) {
        return "“" + (text.length() > 40 ? text.substring(0, 40) + "…" : text) + "”";
    }
}
