package afterlength.craft.varnish;

import afterlength.craft.units.Problem;
import java.util.List;

/** A batch, or what is wrong with its list. */
public sealed interface BatchAnswer permits VarnishBatch, BatchAnswer.Refused {
    /** Nothing could be counted. */
    record Refused(List<Problem> problems) implements BatchAnswer {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
