package afterlength.workshop.setup;

import afterlength.craft.setup.BridgeAnswer;
import afterlength.craft.setup.BridgeShape;
import afterlength.craft.units.Problem;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.paper.SvgPen;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The sentence, the drawing and the table that follow what is typed.
 *
 * @param shape the bridge, or null when it cannot be drawn yet
 */
record LivePart(Typed typed, @Nullable BridgeShape shape) {

    static LivePart of(Typed typed) {
        BridgeAnswer answer = SetupForm.solve(typed, SetupForm.read(typed));
        return new LivePart(typed, typed.sound() && answer instanceof BridgeShape shape ? shape : null);
    }

    /** The page as it is opened: what is still to be measured is no problem yet. */
    static LivePart atFirst(Typed typed) {
        return of(Typed.known(typed.everything()));
    }

    /** What was typed and cannot be; a field that is still empty is not among them. */
    List<Problem> wrong() {
        return typed.problems().stream().filter(problem -> !isEmpty(problem)).toList();
    }

    long missing() {
        return typed.problems().stream().filter(LivePart::isEmpty).count();
    }

    private static boolean isEmpty(Problem problem) {
        return problem.value() == null
                || problem.value().toString().isBlank()
                || problem.value().equals(Double.NaN);
    }

    static LivePart problems(Typed typed) {
        return new LivePart(typed, null);
    }

    String drawing() {
        return shape == null ? "" : SvgPen.forScreen(BridgeDrawing.forScreen(shape));
    }
}
