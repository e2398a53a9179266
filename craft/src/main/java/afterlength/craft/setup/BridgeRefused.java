package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.List;

/** No bridge can be drawn from this; all problems at once, in the order of the question. */
public record BridgeRefused(List<Problem> problems) implements BridgeAnswer {
    public BridgeRefused {
        problems = List.copyOf(problems);
    }
}
