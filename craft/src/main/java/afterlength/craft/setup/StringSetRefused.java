package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.List;

/** The set cannot be computed with; all problems at once. */
public record StringSetRefused(List<Problem> problems) implements StringSetAnswer {
    public StringSetRefused {
        problems = List.copyOf(problems);
    }
}
