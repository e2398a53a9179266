package afterlength.start.demo;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;

/** A clock that is set by hand, so that the weeks of the demonstration can be lived through in a moment. */
public final class DemoClock extends Clock {
    private final ZoneId zone;
    private volatile Instant now;

    public DemoClock(Instant now, ZoneId zone) {
        this.now = now;
        this.zone = zone;
    }

    Instant set(Instant instant) {
        now = instant;
        return now;
    }

    Instant set(LocalDate day, int hour, int minute) {
        return set(day.atTime(LocalTime.of(hour, minute)).atZone(zone).toInstant());
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return zone;
    }

    @Override
    public Clock withZone(ZoneId other) {
        return new DemoClock(now, other);
    }
}
