package afterlength.workshop.work;

import java.util.Optional;

/** Where a visit stands on Today; every visit in the house stands in exactly one place. */
sealed interface Place {
    HouseVisit visit();

    /** A step is being worked on. */
    record InHand(HouseVisit visit, Turn.InHand turn) implements Place {}

    /** A step can be begun now. */
    record Ready(HouseVisit visit, Turn.Next turn) implements Place {}

    /** Nothing can be begun before something has dried. */
    record Resting(HouseVisit visit, Turn.Held turn) implements Place {}

    /** It waits for another stage. */
    record AtDesk(HouseVisit visit, DeskJob job, Optional<StepNow> after) implements Place {}

    static Place of(HouseVisit visit, Turn turn) {
        if (turn instanceof Turn.InHand inHand) {
            return new InHand(visit, inHand);
        }
        if (turn instanceof Turn.Next next) {
            return new Ready(visit, next);
        }
        if (turn instanceof Turn.Held held) {
            return new Resting(visit, held);
        }
        return turn instanceof Turn.AllDone done
                ? new AtDesk(visit, DeskJob.HAND_OVER, done.after())
                : new AtDesk(visit, DeskJob.of(visit), Optional.empty());
    }
}
