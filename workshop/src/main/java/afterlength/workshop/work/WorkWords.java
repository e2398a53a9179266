package afterlength.workshop.work;

import afterlength.workshop.desk.Days;
import java.time.Instant;

/** What is next on one instrument, as its work page and its story say it. */
final class WorkWords {
    private WorkWords() {}

    static Sentence sentence(Turn turn, Instant now) {
        if (turn instanceof Turn.InHand inHand) {
            return new Sentence(
                    "In hand: ", inHand.step().name(), ", begun " + Days.near(inHand.since(), now) + ".", "");
        }
        if (turn instanceof Turn.Next next) {
            return new Sentence(
                    "Next: ",
                    next.step().name(),
                    ".",
                    next.after().map(after -> StepWords.check(after, now)).orElse(""));
        }
        if (turn instanceof Turn.Held held) {
            return new Sentence("Left alone until ", Days.near(held.until(), now), ".", then(held));
        }
        return turn instanceof Turn.AllDone done
                ? new Sentence(
                        "All steps are done.",
                        "",
                        "",
                        done.after().map(after -> StepWords.check(after, now)).orElse(""))
                : new Sentence("No step is listed yet.", "", "", "");
    }

    private static String then(Turn.Held held) {
        return held.next().map(step -> "Then “" + step.name() + "” can follow.").orElse("That is the last wait.");
    }
}
