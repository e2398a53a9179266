package afterlength.workshop.examination;

import afterlength.workshop.ledger.Ledger;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Remembers the air that somebody read last, for whatever instrument: all of them share the room. */
public final class RoomAir {
    private static final Duration HOUR = Duration.ofHours(1);

    private final Ledger ledger;

    private final Logged logged;

    /** What a logger read near a moment; the climate of the shop answers it, wired in {@code start}. */
    public interface Logged {
        Optional<Air> findNear(Instant moment);
    }

    public RoomAir(Ledger ledger) {
        this(ledger, moment -> Optional.empty());
    }

    public RoomAir(Ledger ledger, Logged logged) {
        this.ledger = ledger;
        this.logged = logged;
    }

    /** What somebody read within the hour, or else a logger near this moment, or else somebody since {@code since}. */
    public Optional<Air> find(Instant moment, Instant since) {
        return findSince(moment.minus(HOUR)).or(() -> logged.findNear(moment)).or(() -> findSince(since));
    }

    public Optional<Air> findSince(Instant since) {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT temperature_c, humidity_pct FROM (
                          SELECT temperature_c, humidity_pct, written_at FROM measure
                          UNION ALL SELECT temperature_c, humidity_pct, written_at FROM sitting)
                        WHERE written_at >= :since AND (temperature_c IS NOT NULL OR humidity_pct IS NOT NULL)
                        ORDER BY written_at DESC LIMIT 1
                        """)
                .bind("since", since)
                .map((row, context) -> new Air(
                        row.getObject("temperature_c", Double.class), row.getObject("humidity_pct", Double.class)))
                .findOne());
    }
}
