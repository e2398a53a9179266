package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.List;

/** The bow cannot play there; all problems at once. */
public record BowRefused(List<Problem> problems) implements BowAnswer, BowMapAnswer {
    public BowRefused {
        problems = List.copyOf(problems);
    }
}
