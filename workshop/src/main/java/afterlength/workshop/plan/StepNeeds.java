package afterlength.workshop.plan;

import afterlength.workshop.work.Step;
import java.util.Locale;

/** What a step occupies, read from the words of its needs: "hot glue, clamp", "colours, dust free". */
record StepNeeds(boolean hotGlue, boolean clamp, boolean cupboard) {
    static StepNeeds of(Step step) {
        String words = step.needs().toLowerCase(Locale.ROOT);
        return new StepNeeds(
                words.contains("hot glue"),
                words.contains("clamp"),
                words.contains("cupboard") || words.contains("dust free") || words.contains("dust-free"));
    }
}
