package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.List;

/** This crown cannot be drawn on this instrument; others beside it may. */
public record CrownNotPossible(Crown crown, List<Problem> problems) implements CrownTrial {
    public CrownNotPossible {
        problems = List.copyOf(problems);
    }
}
