package afterlength.workshop.work;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Figures;
import java.time.Instant;

/** How a step and its standing are said. */
final class StepWords {
    private static final double DAYS_FROM_H = 72;
    private static final String NOTHING = "0 min";

    private StepWords() {}

    static String hands(Step step) {
        return hands(step.handsLowMin(), step.handsTypicalMin(), step.handsHighMin());
    }

    /** About 15 min (10 – 30 min). */
    static String hands(int low_min, int typical_min, int high_min) {
        if (typical_min == 0) {
            return "hardly any hands-on time";
        }
        String usual = "about " + Figures.duration(typical_min);
        return low_min == high_min
                ? usual
                : usual + " (" + range(Figures.duration(low_min), Figures.duration(high_min)) + ")";
    }

    /** Then 16 h (4 – 24 h); empty when nothing waits. */
    static String wait(Step step) {
        return step.waitHighH() == 0 ? "" : "then " + wait(step.waitLowH(), step.waitTypicalH(), step.waitHighH());
    }

    /** 16 h (4 – 24 h). */
    static String wait(double low_h, double typical_h, double high_h) {
        return low_h == high_h ? hours(typical_h) : hours(typical_h) + " (" + range(hours(low_h), hours(high_h)) + ")";
    }

    static String waitRange(Step step) {
        return range(hours(step.waitLowH()), hours(step.waitHighH()));
    }

    /** The unit is said once when both have the same. */
    private static String range(String low, String high) {
        if (low.equals(NOTHING)) {
            return "up to " + high;
        }
        String unit = high.substring(high.indexOf(' '));
        boolean same = low.endsWith(unit) && low.indexOf(' ') == low.length() - unit.length();
        return same ? Figures.range(low.substring(0, low.indexOf(' ')), high) : Figures.range(low, high);
    }

    /** Minutes below an hour, days from three on. */
    static String hours(double hours) {
        if (hours < 1) {
            return Figures.plain(hours * 60) + " min";
        }
        return hours < DAYS_FROM_H
                ? Figures.plain(hours) + " h"
                : Figures.fixed(hours / 24, hours % 24 == 0 ? 0 : 1) + " days";
    }

    static String status(StepStatus status, Instant now) {
        if (status instanceof StepStatus.Begun begun) {
            return "begun " + Days.near(begun.since(), now);
        }
        if (status instanceof StepStatus.Waiting waiting) {
            return "waiting until " + Days.near(waiting.until(), now);
        }
        return status instanceof StepStatus.Finished finished
                ? "finished, done " + Days.near(finished.doneAt(), now)
                : "not begun";
    }

    /** Said before anybody builds on a joint or a film whose usual wait is over. */
    static String check(StepNow after, Instant now) {
        return after.status() instanceof StepStatus.Finished finished
                ? "The usual wait after “" + after.step().name() + "” ended " + Days.near(finished.freeAt(), now)
                        + ". That is common practice, not a test: check that it is ready before you go on."
                : "";
    }
}
