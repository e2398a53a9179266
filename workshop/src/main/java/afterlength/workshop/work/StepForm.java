package afterlength.workshop.work;

import afterlength.workshop.desk.Figures;
import afterlength.workshop.desk.Typed;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Reads a step from what was typed. Where only the usual figure is given, low and high are the same. */
final class StepForm {
    private static final int LONGEST_HANDS_MIN = 6000;
    private static final double LONGEST_WAIT_H = 10_000;

    private StepForm() {}

    /** The step, or null when a problem was noted. */
    static @Nullable PlannedStep read(Typed typed) {
        String name = typed.required("name", "What is done", 160);
        double[] hands = three(typed, "hands", "The hands-on time", "min", LONGEST_HANDS_MIN);
        double[] wait = three(typed, "wait", "The wait", "h", LONGEST_WAIT_H);
        String needs = typed.text("needs", "What it needs", 200);
        if (!typed.sound()) {
            return null;
        }
        return new PlannedStep(
                name,
                whole(hands[0]),
                whole(hands[1]),
                whole(hands[2]),
                wait[0],
                wait[1],
                wait[2],
                needs,
                typed.ticked("blocks", "yes"));
    }

    static double[] three(Typed typed, String what, String label, String unit, double highest) {
        Double typical = typed.decimal(what + "_typical", label, unit, 0, highest);
        Double low = typed.decimal(what + "_low", label + ", at least,", unit, 0, highest);
        Double high = typed.decimal(what + "_high", label + ", at most,", unit, 0, highest);
        double middle = typical == null ? 0 : typical;
        double[] three = {low == null ? middle : low, middle, high == null ? middle : high};
        if (typed.sound() && !(three[0] <= three[1] && three[1] <= three[2])) {
            typed.note(
                    what + "_typical",
                    label + " is " + Figures.plain(three[0]) + ", usually " + Figures.plain(three[1]) + ", at most "
                            + Figures.plain(three[2]) + " " + unit
                            + "; the three must rise. Change them, or leave the first and last empty.");
        }
        return three;
    }

    private static int whole(double minutes) {
        return Math.toIntExact(Math.round(minutes));
    }

    static Map<String, String> typedOf(Step step) {
        Map<String, String> typed = new HashMap<>();
        typed.put("name", step.name());
        typed.put(
                "treatment",
                step.treatmentId() == null ? "" : step.treatmentId().toString());
        typed.put("hands_low", Integer.toString(step.handsLowMin()));
        typed.put("hands_typical", Integer.toString(step.handsTypicalMin()));
        typed.put("hands_high", Integer.toString(step.handsHighMin()));
        typed.put("wait_low", Figures.typed(step.waitLowH()));
        typed.put("wait_typical", Figures.typed(step.waitTypicalH()));
        typed.put("wait_high", Figures.typed(step.waitHighH()));
        typed.put("needs", step.needs());
        typed.put("blocks", step.blocksInstrument() ? "yes" : "no");
        typed.put("version", Integer.toString(step.version()));
        return typed;
    }
}
