package afterlength.workshop.examination;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One sitting with an instrument: by what light and with which tools it was looked at, in what air. What nobody looked for cannot
 * have been seen, so a report names this beside the findings.
 *
 * @param means light and tools, one a line: "raking light"
 */
public record Sitting(
        long id,
        long visitId,
        @Nullable Long replaces,
        boolean withdrawn,
        String means,
        String remark,
        @Nullable Double temperatureC,
        @Nullable Double humidityPct,
        Instant satAt,
        String hand,
        Instant writtenAt)
        implements Written {
    public Sitting {
        if (means.isBlank()) {
            throw new IllegalArgumentException("a sitting names its light and tools");
        }
    }

    public Air air() {
        return new Air(temperatureC, humidityPct);
    }

    /** "daylight, raking light, loupe". */
    public String meansWords() {
        return String.join(", ", means.lines().toList());
    }

    /** The same sitting as a new entry that replaces an earlier one. */
    Sitting again(long replaced, boolean nowWithdrawn, Instant at) {
        return new Sitting(
                0, visitId, replaced, nowWithdrawn, means, remark, temperatureC, humidityPct, satAt, hand, at);
    }
}
