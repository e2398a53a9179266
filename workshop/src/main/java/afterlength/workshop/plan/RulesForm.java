package afterlength.workshop.plan;

import afterlength.workshop.desk.Typed;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads the rules of the bench from what was typed. */
final class RulesForm {
    private static final int MOST_WARM_UP_MIN = 240;
    private static final int MOST = 99;

    private final Typed typed;

    private RulesForm(Typed typed) {
        this.typed = typed;
    }

    /** The rules, or null when a problem was noted. */
    static @Nullable BenchRules read(Typed typed, List<String> hands) {
        return new RulesForm(typed).read(hands);
    }

    private @Nullable BenchRules read(List<String> hands) {
        WeekHours hours = hours("hours");
        WeekHours glue = hours("glue");
        Map<String, WeekHours> own = new HashMap<>();
        for (int n = 0; n < hands.size(); n++) {
            WeekHours one = hours("own-" + n);
            if (one != null && !one.days().isEmpty()) {
                own.put(hands.get(n), one);
            }
        }
        Integer warmUp = number("warm_up", "The warming of the pot in minutes", 0, MOST_WARM_UP_MIN);
        Integer clamps = number("clamps", "How many joints can be clamped at once", 1, MOST);
        Integer cupboard = number("cupboard", "How many instruments can dry free of dust", 0, MOST);
        if (hours != null && hours.days().isEmpty()) {
            typed.note(
                    "hours", "The hours of the shop are empty. Write at least one day, such as Mon-Fri 09:00-18:00.");
        }
        if (!typed.sound() || hours == null || glue == null || warmUp == null || clamps == null || cupboard == null) {
            return null;
        }
        BenchRules rules = new BenchRules(hours, own, glue, warmUp, clamps, cupboard);
        hot(rules);
        return typed.sound() ? rules : null;
    }

    /** A half-day that is over before the glue is hot holds no joint. */
    private void hot(BenchRules rules) {
        if (rules.glueHours().longest_min() < rules.warmUp_min() + 2 * 60) {
            typed.note(
                    "warm_up",
                    "Warming takes " + rules.warmUp_min() + " min, and the longest glue half-day is "
                            + rules.glueHours().longest_min()
                            + " min; at least two hours have to be left to work with the glue. Write longer half-days, or a"
                            + " shorter warming.");
        }
    }

    private @Nullable WeekHours hours(String name) {
        try {
            return HoursText.read(typed.raw(name));
        } catch (IllegalArgumentException unreadable) {
            typed.note(name, String.valueOf(unreadable.getMessage()));
            return null;
        }
    }

    private @Nullable Integer number(String name, String label, int least, int most) {
        if (typed.raw(name).isBlank()) {
            typed.note(name, label + " is empty; allowed is a whole number from " + least + " to " + most + ".");
            return null;
        }
        return typed.whole(name, label, least, most);
    }

    static Map<String, String> typedOf(BenchRules rules, List<String> hands) {
        Map<String, String> typed = new HashMap<>();
        typed.put("hours", rules.hours().text());
        typed.put("glue", rules.glue().text());
        typed.put("warm_up", Integer.toString(rules.warmUp_min()));
        typed.put("clamps", Integer.toString(rules.clampSets()));
        typed.put("cupboard", Integer.toString(rules.cupboardPlaces()));
        for (int n = 0; n < hands.size(); n++) {
            WeekHours own = rules.own().get(hands.get(n));
            typed.put("own-" + n, own == null ? "" : own.text());
        }
        return typed;
    }
}
