package afterlength.workshop.glue;

import afterlength.craft.glue.PotHeat;
import afterlength.workshop.desk.Typed;
import java.time.Instant;
import java.util.Optional;

/** Reads what was done to a pot. A pot hotter than any source allows is refused: cool it first. */
final class EventForm {
    private EventForm() {}

    static Optional<PotEvent> read(Typed typed, Pot pot, String hand, Instant now) {
        PotStage what = typed.choice("what", "What was done", PotStage.class);
        Double pot_C = typed.decimal("pot_C", "The pot", "°C", -30, 130);
        if (pot_C != null && pot_C > PotHeat.REFUSED_ABOVE_C) {
            typed.note(
                    "pot_C",
                    "The pot reads " + typed.raw("pot_C").strip() + " °C; above " + PotHeat.REFUSED_ABOVE_C
                            + " °C hide glue breaks down. Take it off the heat, let it cool to about 60 °C and read again.");
        }
        if (pot.stage() == PotStage.ENDED) {
            typed.note("what", "This batch is finished. Make up a fresh one.");
        }
        if (!typed.sound() || what == null) {
            return Optional.empty();
        }
        Instant due = what == PotStage.ENDED ? null : pot.usualDue(what, now);
        return Optional.of(new PotEvent(0, pot.batch().id(), what, pot_C, due, hand, now));
    }
}
