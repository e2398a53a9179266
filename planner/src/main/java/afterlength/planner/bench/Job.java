package afterlength.planner.bench;

/**
 * An instrument's visit as the bench sees it.
 *
 * @param release the minute from which work on it may begin
 * @param due the promised minute
 * @param weight how much an hour's lateness costs
 */
public record Job(int id, String kind, int release, int due, int weight) {}
