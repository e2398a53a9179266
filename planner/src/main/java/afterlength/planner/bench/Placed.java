package afterlength.planner.bench;

/** When a step begins and who does it. */
public record Placed(int start, int person) {}
