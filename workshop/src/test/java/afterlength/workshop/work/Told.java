package afterlength.workshop.work;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/** Steps and diary entries made by hand, for tests that need no shop. */
final class Told {
    static final Instant MONDAY = Instant.parse("2026-11-02T09:00:00Z");

    private Told() {}

    static Instant after(double hours) {
        return MONDAY.plus(Duration.ofSeconds(Math.round(hours * 3600)));
    }

    static Step step(long id, @Nullable Long treatment, double wait_h, boolean blocks) {
        return new Step(
                id,
                1,
                treatment,
                (int) id,
                "step " + id,
                10,
                20,
                30,
                wait_h,
                wait_h,
                wait_h,
                "",
                blocks,
                Step.Standing.IN_ORDER,
                1);
    }

    static DiaryEntry entry(long id, Writing writing) {
        return new DiaryEntry(id, null, false, "", writing.at(), id, writing.at(), writing);
    }
}
