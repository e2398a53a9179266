package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeShape;
import afterlength.craft.units.Problem;
import afterlength.workshop.desk.Typed;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The sentence on top: the height to cut, or what stands in its way.
 *
 * @param shape the bridge, or null when it cannot be drawn yet
 */
record AnswerPart(Typed typed, @Nullable BridgeShape shape) {
    /** What was typed and cannot be; a field that is still empty is not among them. */
    List<Problem> wrong() {
        return typed.problems().stream().filter(problem -> !isEmpty(problem)).toList();
    }

    long missing() {
        return typed.problems().stream().filter(AnswerPart::isEmpty).count();
    }

    private static boolean isEmpty(Problem problem) {
        return problem.value() == null
                || problem.value().toString().isBlank()
                || problem.value().equals(Double.NaN);
    }
}
