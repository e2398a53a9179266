package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import afterlength.workshop.work.HouseVisit;
import java.time.LocalDate;

/**
 * A piece in a plan, and whose instrument it is on.
 *
 * @param id its number on the planner's bench
 */
record PlannedLine(int id, HouseVisit visit, Piece piece, PlacedPiece place) {
    LocalDate day() {
        return Days.day(place.start());
    }

    String name() {
        return piece.step().name();
    }
}
