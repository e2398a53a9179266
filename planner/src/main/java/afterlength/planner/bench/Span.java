package afterlength.planner.bench;

/** From one minute to another, both counted from Monday 00:00. */
public record Span(int from, int to) {}
