package afterlength.craft.setup;

import afterlength.craft.units.Problem;
import java.util.List;

/**
 * Everything that makes a bridge impossible, all at once: first the single values, then, when these can be computed with, what
 * they do together. Unusual values are no problem here; they come back as caveats beside the answer.
 */
public final class BridgeChecks {
    private BridgeChecks() {}

    public static List<Problem> problems(BridgeInputs inputs) {
        ProblemList problems = new ProblemList();
        ValueChecks.look(inputs, problems);
        StringChecks.look(inputs, problems);
        if (problems.isEmpty()) {
            ArcChecks.look(inputs, problems);
        }
        if (problems.isEmpty()) {
            CrownChecks.look(inputs, problems);
        }
        return problems.list();
    }
}
