package afterlength.workshop.plan;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Placed;
import afterlength.planner.bench.Plan;
import afterlength.planner.bench.Workshop;
import afterlength.workshop.work.HouseVisit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The shop at one moment as the planner sees it, and what each of the planner's numbers means. Jobs are the visits, steps the pieces,
 * persons the hands, each in the order of its list.
 *
 * @param begun true places of what has begun; {@link Placed#NOWHERE} for all else
 */
record Bench(
        Workshop workshop,
        BenchTime time,
        List<HouseVisit> visits,
        List<Piece> pieces,
        List<String> hands,
        List<Placed> begun) {
    Bench {
        visits = List.copyOf(visits);
        pieces = List.copyOf(pieces);
        hands = List.copyOf(hands);
        begun = List.copyOf(begun);
    }

    /**
     * The plan to go on from: what has begun where it truly began; what was planned where it stood, or now when that is past; what is
     * new since comes after.
     */
    Plan goOnFrom(KeptPlan kept) {
        List<Placed> placed = new ArrayList<>();
        for (int n = 0; n < pieces.size(); n++) {
            placed.add(pieces.get(n).begun() ? begun.get(n) : goOn(kept.find(pieces.get(n))));
        }
        return new Plan(placed);
    }

    private Placed goOn(Optional<PlacedPiece> before) {
        return before.map(place ->
                        new Placed(Math.max(time.minute(place.start()), workshop.now()), hands.indexOf(place.hand())))
                .orElse(Placed.NOWHERE);
    }

    /** The places of a plan in the shop's own time. */
    List<PlacedPiece> placed(Plan plan) {
        List<PlacedPiece> all = new ArrayList<>();
        for (BenchStep step : workshop.steps()) {
            Placed place = plan.of(step);
            Piece piece = pieces.get(step.id());
            all.add(new PlacedPiece(
                    piece.step().id(),
                    piece.part(),
                    time.at(place.start()),
                    time.at(place.start() + step.hands()),
                    time.at(place.start() + step.length()),
                    hands.get(Math.max(0, place.person()))));
        }
        return all;
    }

    HouseVisit visitOf(BenchStep step) {
        return visits.get(step.job());
    }
}
