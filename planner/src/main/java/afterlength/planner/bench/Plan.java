package afterlength.planner.bench;

import java.util.List;

/** A place for each step of a workshop, in the order of its steps. */
public record Plan(List<Placed> placed) {
    public Plan {
        placed = List.copyOf(placed);
    }

    public Placed of(BenchStep step) {
        return placed.get(step.id());
    }
}
