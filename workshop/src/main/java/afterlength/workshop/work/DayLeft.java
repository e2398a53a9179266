package afterlength.workshop.work;

import afterlength.workshop.desk.Days;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;

/** What the day still holds: minutes until the shop closes; 0 once it has closed. */
record DayLeft(Instant now, LocalTime closesAt) {
    long minutes() {
        Instant closing = Days.instant(Days.day(now).atTime(closesAt));
        return Math.max(0, Duration.between(now, closing).toMinutes());
    }

    boolean fits(Step step) {
        return step.handsTypicalMin() <= minutes() && minutes() > 0;
    }
}
