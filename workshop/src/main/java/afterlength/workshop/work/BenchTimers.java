package afterlength.workshop.work;

import java.time.Instant;
import java.util.List;

/** Something of the bench that runs by the clock and belongs to no step, such as a glue pot; wired in {@code start}. */
public interface BenchTimers {
    List<BenchTimer> list(Instant now);
}
