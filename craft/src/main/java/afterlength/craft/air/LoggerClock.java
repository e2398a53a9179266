package afterlength.craft.air;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.zone.ZoneRules;
import java.util.List;
import java.util.OptionalLong;

/**
 * Turns the time on a logger's own clock into a moment. On a clock that follows summer time one hour a year does not exist and one
 * comes twice: of the second, the first pass is read until the rows go back, then the second.
 */
final class LoggerClock {
    private final ZoneRules rules;
    private final boolean summerTime;
    private long last_s = Long.MIN_VALUE;
    private boolean setBack;

    LoggerClock(LoggerLayout layout) {
        rules = layout.zone().getRules();
        summerTime = layout.summerTime();
    }

    /** The moment in seconds since 1970, or nothing for a time that was left out. */
    OptionalLong findMoment_s(LocalDateTime local) {
        setBack = false;
        if (!summerTime) {
            return read(local, rules.getStandardOffset(local.toInstant(ZoneOffset.UTC)));
        }
        List<ZoneOffset> offsets = rules.getValidOffsets(local);
        if (offsets.isEmpty()) {
            return OptionalLong.empty();
        }
        boolean second = offsets.size() > 1 && local.toEpochSecond(offsets.get(0)) <= last_s;
        setBack = second;
        return read(local, offsets.get(second ? 1 : 0));
    }

    private OptionalLong read(LocalDateTime local, ZoneOffset offset) {
        long moment_s = local.toEpochSecond(offset);
        last_s = Math.max(last_s, moment_s);
        return OptionalLong.of(moment_s);
    }

    /** Whether the time read last lies in the second pass of the hour that comes twice. */
    boolean wasSetBack() {
        return setBack;
    }
}
