package afterlength.workshop.work;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that moves only when told. */
final class BenchClock extends Clock {
    private Instant now;

    BenchClock(String now) {
        this.now = Instant.parse(now);
    }

    void set(String to) {
        now = Instant.parse(to);
    }

    void pass(Duration time) {
        now = now.plus(time);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("this clock stays in its zone");
    }
}
