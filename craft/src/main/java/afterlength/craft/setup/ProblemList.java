package afterlength.craft.setup;

import afterlength.craft.units.PlainNumber;
import afterlength.craft.units.Problem;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Gathers what is wrong, in the order it is looked at. */
final class ProblemList {
    private final List<Problem> problems = new ArrayList<>();

    void require(Permitted permitted, String at, String what, double value, String advice) {
        if (!permitted.holds(value)) {
            add(
                    at,
                    value,
                    what + " is " + PlainNumber.of(value, permitted.unit()) + "; it " + permitted.demand() + ". "
                            + advice);
        }
    }

    void add(String at, @Nullable Object value, String message) {
        problems.add(new Problem(at, value, message));
    }

    boolean isEmpty() {
        return problems.isEmpty();
    }

    List<Problem> list() {
        return List.copyOf(problems);
    }
}
