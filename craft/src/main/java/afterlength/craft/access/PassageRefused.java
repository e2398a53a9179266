package afterlength.craft.access;

import afterlength.craft.units.Problem;
import java.util.List;

/** The question cannot be answered; every reason is listed. */
public record PassageRefused(List<Problem> problems) implements PassageAnswer {
    public PassageRefused {
        problems = List.copyOf(problems);
    }
}
