package afterlength.workshop.work;

import java.time.Instant;

/**
 * A clock of the bench.
 *
 * @param name what runs, such as "hide glue soaks"
 * @param due what to do when it is over
 * @param address where to look at it
 * @param care a caution to stand beside it, or empty
 */
public record BenchTimer(String name, String due, Instant until, String address, String care) {}
