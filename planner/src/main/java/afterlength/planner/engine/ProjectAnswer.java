package afterlength.planner.engine;

import java.util.List;

/** What came of planning a project. */
public sealed interface ProjectAnswer {
    /**
     * A plan.
     *
     * @param starts of every activity, the start and the end of the project among them
     * @param bound a makespan that no plan can beat
     */
    record Made(int makespan, List<Integer> starts, int bound) implements ProjectAnswer {
        public Made {
            starts = List.copyOf(starts);
        }
    }

    /** It is proven that there is no plan. */
    record Impossible(String why) implements ProjectAnswer {}

    /** None was found in the time given, and it is not proven that there is none. */
    record NotFound() implements ProjectAnswer {}
}
