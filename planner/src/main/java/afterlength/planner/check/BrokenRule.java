package afterlength.planner.check;

/**
 * A rule that a plan breaks.
 *
 * @param step the step at which it shows, or -1 for the plan as a whole
 * @param other the other step concerned, or -1
 */
public record BrokenRule(Rule rule, int step, int other) {
    BrokenRule(Rule rule, int step) {
        this(rule, step, -1);
    }

    /** The sentence for a person, with the names of the steps. */
    public String words(java.util.function.IntFunction<String> nameOfStep) {
        String about = step < 0 ? "" : ": " + nameOfStep.apply(step);
        String with = other < 0 ? "" : " and " + nameOfStep.apply(other);
        return "Broken: " + rule.words() + about + with + ".";
    }
}
