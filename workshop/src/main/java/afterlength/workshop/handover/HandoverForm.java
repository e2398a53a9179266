package afterlength.workshop.handover;

import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Visit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;

/** Reads a handover from what was typed. */
final class HandoverForm {
    private HandoverForm() {}

    static Handover read(Typed typed, Visit visit, LocalDate today, Instant now) {
        LocalDate on = typed.date("handed_over_on", "The day of handover");
        LocalDate handedOverOn = on == null ? today : on;
        if (handedOverOn.isBefore(visit.receivedOn())) {
            typed.note(
                    "handed_over_on",
                    "The day of handover " + handedOverOn + " lies before the receipt on " + visit.receivedOn()
                            + "; choose that day or a later one.");
        }
        LocalDate next = typed.date("next_check_on", "The day of the next check");
        if (next != null && next.isBefore(handedOverOn)) {
            typed.note(
                    "next_check_on",
                    "The next check on " + next + " lies before the handover on " + handedOverOn
                            + "; choose a later day or leave it empty.");
        }
        return new Handover(
                0,
                visit.id(),
                handedOverOn,
                typed.required("received_by", "Who receives it", 120),
                typed.text("left_as_it_was", "What was left as it was", 6000),
                typed.text("care", "The care advice", 6000),
                typed.text("returned_parts", "Parts given back", 2000),
                next,
                now,
                typed.required("hand", "Whose hands", 60));
    }

    static Map<String, String> typedOf(Handover handover) {
        Map<String, String> typed = new HashMap<>();
        typed.put("handed_over_on", handover.handedOverOn().toString());
        typed.put("received_by", handover.receivedBy());
        typed.put("left_as_it_was", handover.leftAsItWas());
        typed.put("care", handover.care());
        typed.put("returned_parts", handover.returnedParts());
        typed.put(
                "next_check_on",
                handover.nextCheckOn() == null ? "" : handover.nextCheckOn().toString());
        typed.put("hand", handover.hand());
        return typed;
    }
}
