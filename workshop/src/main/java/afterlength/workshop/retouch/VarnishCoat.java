package afterlength.workshop.retouch;

import afterlength.craft.varnish.CoatRecord;
import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A coat of a batch that was watched until it was dry to the touch. */
public record VarnishCoat(
        long id,
        long varnishId,
        @Nullable Long replaces,
        boolean withdrawn,
        LocalDate laidOn,
        double touchDryH,
        double temperatureC,
        double humidityPct,
        String remark,
        Instant writtenAt,
        String hand) {

    CoatRecord record() {
        return new CoatRecord(touchDryH, temperatureC, humidityPct);
    }

    VarnishCoat withdrawnAt(Instant now) {
        return new VarnishCoat(0, varnishId, id, true, laidOn, touchDryH, temperatureC, humidityPct, remark, now, hand);
    }
}
