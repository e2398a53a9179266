package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import afterlength.workshop.work.HouseVisit;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What a plan changes against the one that was taken: promises, and steps that change their day. */
record PlanChange(CheckedPlan plan, List<VisitLine> visits, List<StepMove> moves) {
    PlanChange {
        visits = List.copyOf(visits);
        moves = List.copyOf(moves);
    }

    /**
     * A visit before and after.
     *
     * @param readyBefore when it was to be ready by the plan that was taken, or null when that one did not know it
     * @param day the open day on which it is ready now
     * @param late whether that is after what was promised
     */
    record VisitLine(HouseVisit visit, @Nullable Instant readyBefore, Instant ready, LocalDate day, boolean late) {
        /** What could be promised from now on: the old day while it can be kept. */
        @Nullable
        LocalDate promise() {
            return late ? day : visit.promisedOn();
        }

        boolean moved() {
            return readyBefore != null && !Days.day(readyBefore).equals(Days.day(ready));
        }
    }

    /** A step that changes its day. */
    record StepMove(PlannedLine line, Instant before) {}

    static PlanChange of(CheckedPlan plan, KeptPlan kept, BenchCalendar calendar) {
        return new PlanChange(plan, visits(plan, kept, calendar), moves(plan, kept));
    }

    private static List<VisitLine> visits(CheckedPlan plan, KeptPlan kept, BenchCalendar calendar) {
        List<VisitLine> lines = new ArrayList<>();
        for (HouseVisit visit : plan.bench().visits()) {
            Instant ready = plan.findReady(visit.visitId()).orElseThrow();
            lines.add(new VisitLine(
                    visit,
                    kept.findVisit(visit.visitId()).map(PlannedVisit::readyAt).orElse(null),
                    ready,
                    calendar.readyDay(ready),
                    plan.isLate(visit, calendar)));
        }
        return lines;
    }

    private static List<StepMove> moves(CheckedPlan plan, KeptPlan kept) {
        List<StepMove> moves = new ArrayList<>();
        for (PlannedLine line : plan.lines()) {
            Optional<PlacedPiece> before = kept.find(line.piece());
            boolean moved = !line.piece().begun()
                    && line.place().hasHands()
                    && before.isPresent()
                    && !Objects.equals(Days.day(before.get().start()), line.day());
            if (moved) {
                moves.add(new StepMove(line, before.orElseThrow().start()));
            }
        }
        return moves;
    }

    /** Promises that cannot be kept. */
    List<VisitLine> late() {
        return visits.stream().filter(VisitLine::late).toList();
    }
}
