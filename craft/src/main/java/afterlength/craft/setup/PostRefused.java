package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.List;

/** No post can be given from this; all problems at once. */
public record PostRefused(List<Problem> problems) implements PostAnswer {
    public PostRefused {
        problems = List.copyOf(problems);
    }
}
