package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.List;

/** No load can be given; all problems at once. */
public record LoadRefused(List<Problem> problems) implements LoadAnswer {
    public LoadRefused {
        problems = List.copyOf(problems);
    }
}
