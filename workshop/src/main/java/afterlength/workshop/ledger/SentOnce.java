package afterlength.workshop.ledger;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Lets a screen send a change again until it hears that it was taken. The key that the screen gave it is kept in the same writing as
 * the change, so that both are there or neither; what comes a second time is answered as it was the first time.
 */
public final class SentOnce {
    private SentOnce() {}

    /** What was answered when this key came first; empty for a new key, and for a change that carries none. */
    public static Optional<String> find(Handle handle, String key) {
        return handle.createQuery("SELECT answer FROM sent_once WHERE sent_key = :key")
                .bind("key", key)
                .mapTo(String.class)
                .findOne();
    }

    /** Remembers a key with its answer; a change without a key is not remembered. */
    public static void keep(Handle handle, String key, String answer, Instant now) {
        if (!key.isEmpty()) {
            handle.createUpdate("INSERT INTO sent_once (sent_key, answer, received_at) VALUES (:key, :answer, :now)")
                    .bind("key", key)
                    .bind("answer", answer)
                    .bind("now", now.truncatedTo(ChronoUnit.SECONDS))
                    .execute();
        }
    }
}
