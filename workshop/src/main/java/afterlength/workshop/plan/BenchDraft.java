package afterlength.workshop.plan;

import afterlength.planner.bench.BenchStep;
import afterlength.planner.bench.Placed;
import afterlength.workshop.work.Step;
import java.util.ArrayList;
import java.util.List;

/** The planner's steps while they are put together, each with the piece it stands for. */
final class BenchDraft {
    final List<BenchStep> steps = new ArrayList<>();
    final List<Piece> pieces = new ArrayList<>();
    final List<Placed> begun = new ArrayList<>();

    /** One piece in the making; what is left alone says "nothing of the kind". */
    final class Making {
        private final int job;
        private final Step step;
        private final int part;
        private String name = "";
        private int hands;
        private int waits;
        private int persons;
        private int samePersonAs = -1;
        private boolean holdsInstrument;
        private StepNeeds needs = new StepNeeds(false, false, false);
        private List<Integer> after = List.of();
        private int maxLagFrom = -1;
        private int maxLag;
        private Placed place = Placed.NOWHERE;

        private Making(int job, Step step, int part) {
            this.job = job;
            this.step = step;
            this.part = part;
            this.name = step.name();
        }

        Making lasting(int hands_min, int wait_min) {
            hands = hands_min;
            waits = wait_min;
            return this;
        }

        Making by(int personSet, int sameAs) {
            persons = personSet;
            samePersonAs = sameAs;
            return this;
        }

        Making holdingTheInstrument(boolean held) {
            holdsInstrument = held;
            return this;
        }

        Making needing(StepNeeds what) {
            needs = what;
            return this;
        }

        Making after(List<Integer> before) {
            after = List.copyOf(before);
            return this;
        }

        /** Begins when the hands of that piece let go. */
        Making rightAfter(int piece) {
            after = List.of(piece);
            maxLagFrom = piece;
            maxLag = steps.get(piece).hands();
            return this;
        }

        Making begunAt(int minute, int person) {
            place = new Placed(minute, person);
            return this;
        }

        int add() {
            int id = steps.size();
            boolean isBegun = !place.equals(Placed.NOWHERE);
            steps.add(new BenchStep(
                    id,
                    job,
                    name,
                    hands,
                    waits,
                    persons,
                    samePersonAs,
                    holdsInstrument,
                    needs.clamp() ? 0 : -1,
                    needs.clamp() ? 1 : 0,
                    needs.cupboard() && waits > 0 ? 1 : 0,
                    needs.hotGlue() && hands > 0 && !isBegun,
                    after,
                    maxLagFrom,
                    maxLag));
            pieces.add(new Piece(step, part, isBegun));
            begun.add(place);
            return id;
        }
    }

    Making piece(int job, Step step, int part) {
        return new Making(job, step, part);
    }
}
