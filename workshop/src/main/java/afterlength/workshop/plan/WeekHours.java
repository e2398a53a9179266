package afterlength.workshop.plan;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Hours that come again every week; a day that is not named is closed. */
public record WeekHours(Map<DayOfWeek, List<Stretch>> days) {
    public WeekHours {
        Map<DayOfWeek, List<Stretch>> copy = new EnumMap<>(DayOfWeek.class);
        days.forEach((day, stretches) -> copy.put(day, List.copyOf(stretches)));
        days = Map.copyOf(copy);
    }

    /** The same hours from Monday to Friday. */
    public static WeekHours onWeekdays(List<Stretch> stretches) {
        Map<DayOfWeek, List<Stretch>> days = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) {
            if (day.getValue() <= DayOfWeek.FRIDAY.getValue()) {
                days.put(day, stretches);
            }
        }
        return new WeekHours(days);
    }

    public List<Stretch> on(DayOfWeek day) {
        return days.getOrDefault(day, List.of());
    }

    Optional<LocalTime> findClosing(DayOfWeek day) {
        return on(day).stream().map(Stretch::to).max(LocalTime::compareTo);
    }

    /** The longest stretch of the week in minutes. */
    int longest_min() {
        return days.values().stream()
                .flatMap(List::stream)
                .mapToInt(stretch ->
                        stretch.to().toSecondOfDay() / 60 - stretch.from().toSecondOfDay() / 60)
                .max()
                .orElse(0);
    }

    int week_min() {
        return days.values().stream()
                .flatMap(List::stream)
                .mapToInt(stretch ->
                        stretch.to().toSecondOfDay() / 60 - stretch.from().toSecondOfDay() / 60)
                .sum();
    }

    /** As it is typed: a line for each run of days with the same hours. */
    public String text() {
        List<String> lines = new ArrayList<>();
        int day = 1;
        while (day <= 7) {
            int last = day;
            while (last < 7 && on(DayOfWeek.of(last + 1)).equals(on(DayOfWeek.of(day)))) {
                last++;
            }
            if (!on(DayOfWeek.of(day)).isEmpty()) {
                lines.add(shortName(day) + (last > day ? "-" + shortName(last) : "") + " "
                        + on(DayOfWeek.of(day)).stream().map(Stretch::text).collect(Collectors.joining(", ")));
            }
            day = last + 1;
        }
        return String.join("\n", lines);
    }

    static String shortName(int day) {
        return DayOfWeek.of(day).getDisplayName(TextStyle.SHORT, Locale.UK);
    }
}
