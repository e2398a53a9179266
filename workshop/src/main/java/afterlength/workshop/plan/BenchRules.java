package afterlength.workshop.plan;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;

/**
 * What the shop has for its work: hours, glue half-days, clamps, places to dry. The figures of a fresh shop are our own guesses and
 * stand on the shelf to be changed.
 *
 * @param own other hours of single persons, by name; who is not named keeps the hours of the shop
 * @param glue stretches during which the pot can be kept hot; empty for all hours of the shop
 * @param warmUp_min minutes from the beginning of such a stretch until the glue is hot
 * @param clampSets how many joints can be clamped at once
 * @param cupboardPlaces how many instruments can dry free of dust at once; 0 when the shop has no such place and none is waited for
 */
public record BenchRules(
        WeekHours hours,
        Map<String, WeekHours> own,
        WeekHours glue,
        int warmUp_min,
        int clampSets,
        int cupboardPlaces) {
    private static final LocalTime OPENS = LocalTime.of(9, 0);
    private static final Stretch MORNING = new Stretch(OPENS, LocalTime.of(12, 30));
    private static final LocalTime AFTER_LUNCH = LocalTime.of(13, 30);

    /** Heating costs half an hour; common practice, see {@code craft.glue.PotTimes} for what is read of it. */
    static final int WARM_UP_MIN = 30;

    static final int CLAMP_SETS = 4;
    static final int CUPBOARD_PLACES = 3;

    public BenchRules {
        own = Map.copyOf(own);
    }

    /** Weekdays with an hour at noon, until the shop closes. */
    static BenchRules fresh(LocalTime closesAt) {
        List<Stretch> day = closesAt.isAfter(AFTER_LUNCH)
                ? List.of(MORNING, new Stretch(AFTER_LUNCH, closesAt))
                : List.of(closesAt.isAfter(OPENS) ? new Stretch(OPENS, closesAt) : MORNING);
        return new BenchRules(
                WeekHours.onWeekdays(day), Map.of(), new WeekHours(Map.of()), WARM_UP_MIN, CLAMP_SETS, CUPBOARD_PLACES);
    }

    WeekHours of(String hand) {
        return own.getOrDefault(hand, hours);
    }

    WeekHours glueHours() {
        return glue.days().isEmpty() ? hours : glue;
    }
}
