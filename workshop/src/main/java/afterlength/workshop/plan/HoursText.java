package afterlength.workshop.plan;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads hours as people write them, a line for each group of days: {@code Mon-Fri 09:00-12:30, 13:30-18:00}. */
final class HoursText {
    private static final String DAY = "(Mon|Tue|Wed|Thu|Fri|Sat|Sun)";
    private static final Pattern LINE = Pattern.compile(DAY + "(?:\\s*[-–]\\s*" + DAY + ")?\\s+(.+)");
    private static final Pattern STRETCH = Pattern.compile("(\\d{1,2}[:.]\\d{2})\\s*[-–]\\s*(\\d{1,2}[:.]\\d{2})");
    private static final Pattern LINE_END = Pattern.compile("\\R|;");
    private static final Pattern COMMA = Pattern.compile(",");
    private static final List<String> NAMES = List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun");

    private final Map<DayOfWeek, List<Stretch>> days = new EnumMap<>(DayOfWeek.class);

    private HoursText() {}

    /**
     * The hours written there.
     *
     * @throws IllegalArgumentException with a sentence for the person who typed it
     */
    static WeekHours read(String text) {
        HoursText reading = new HoursText();
        int number = 0;
        for (String line : LINE_END.splitAsStream(text.strip()).toList()) {
            number++;
            if (!line.isBlank()) {
                reading.line(number, line.strip());
            }
        }
        return new WeekHours(reading.days);
    }

    private void line(int number, String line) {
        Matcher matcher = LINE.matcher(line);
        if (!matcher.matches()) {
            throw unreadable(number, line);
        }
        int first = NAMES.indexOf(matcher.group(1));
        int last = matcher.group(2) == null ? first : NAMES.indexOf(matcher.group(2));
        List<Stretch> stretches = stretches(number, line, matcher.group(3));
        int more = Math.floorMod(last - first, 7);
        for (int n = 0; n <= more; n++) {
            add(number, line, DayOfWeek.of((first + n) % 7 + 1), stretches);
        }
    }

    private static List<Stretch> stretches(int number, String line, String text) {
        List<Stretch> stretches = new ArrayList<>();
        for (String part : COMMA.splitAsStream(text).toList()) {
            Matcher matcher = STRETCH.matcher(part.strip());
            if (!matcher.matches()) {
                throw unreadable(number, line);
            }
            try {
                stretches.add(new Stretch(time(matcher.group(1)), time(matcher.group(2))));
            } catch (DateTimeParseException | IllegalArgumentException notInOrder) {
                throw unreadable(number, line);
            }
        }
        return stretches;
    }

    private void add(int number, String line, DayOfWeek day, List<Stretch> stretches) {
        List<Stretch> all = days.computeIfAbsent(day, fresh -> new ArrayList<>());
        all.addAll(stretches);
        all.sort(Comparator.comparing(Stretch::from));
        for (int n = 1; n < all.size(); n++) {
            if (all.get(n).from().isBefore(all.get(n - 1).to())) {
                throw new IllegalArgumentException(
                        "Line " + number + " is “" + line + "”, and its hours overlap others of "
                                + WeekHours.shortName(day.getValue()) + ". Write each hour of a day once.");
            }
        }
    }

    private static LocalTime time(String text) {
        String clock = text.replace('.', ':');
        return LocalTime.parse(clock.length() == 4 ? "0" + clock : clock);
    }

    private static IllegalArgumentException unreadable(int number, String line) {
        return new IllegalArgumentException("Line " + number + " is “" + line
                + "”, which is no day with hours. Write a day or a run of days, then from and to on the same day, such as"
                + " Mon-Fri 09:00-12:30, 13:30-18:00.");
    }
}
