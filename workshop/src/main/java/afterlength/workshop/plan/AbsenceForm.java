package afterlength.workshop.plan;

import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Reads who is away when from what was typed. */
final class AbsenceForm {
    private AbsenceForm() {}

    /** The absence, or null when a problem was noted. */
    static @Nullable Absence read(Typed typed, List<String> hands, String hand, Instant now) {
        String away = typed.raw("away");
        if (!hands.contains(away)) {
            typed.note("away", "Who is away is “" + away + "”; choose one of: " + String.join(", ", hands) + ".");
        }
        LocalDate from = typed.date("from_day", "The first day");
        LocalDate to = typed.raw("to_day").isBlank() ? from : typed.date("to_day", "The last day");
        if (from == null && typed.problem("from_day").isEmpty()) {
            typed.note("from_day", "The first day is empty. Write it, such as 2026-03-14.");
        }
        if (from != null && to != null && to.isBefore(from)) {
            typed.note(
                    "to_day",
                    "The last day " + to + " lies before the first, " + from + "; choose that day or a later one.");
        }
        String reason = typed.text("reason", "The reason", 120);
        return typed.sound() && from != null && to != null
                ? new Absence(0, null, false, away, from, to, reason, hand, now)
                : null;
    }
}
