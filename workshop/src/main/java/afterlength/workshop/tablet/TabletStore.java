package afterlength.workshop.tablet;

import afterlength.workshop.ledger.Ledger;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Keeps which tablets were paired and which were shut out. */
public final class TabletStore {
    private static final Duration SEEN_WITHIN = Duration.ofMinutes(15);

    private final Ledger ledger;

    public TabletStore(Ledger ledger) {
        this.ledger = ledger;
    }

    List<Tablet> list() {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT id, name, paired_at, seen_at, shut_out_at FROM tablet ORDER BY shut_out_at IS NOT NULL, id DESC
                        """).mapTo(Tablet.class).list());
    }

    void add(String name, String secret, Instant now) {
        ledger.change(handle -> handle.createUpdate("""
                        INSERT INTO tablet (name, secret_sha256, paired_at, seen_at) VALUES (:name, :secret, :now, :now)
                        """)
                .bind("name", name)
                .bind("secret", Secret.sha256(secret))
                .bind("now", now)
                .execute());
    }

    void shutOut(long id, Instant now) {
        ledger.change(handle -> handle.createUpdate(
                        "UPDATE tablet SET shut_out_at = :now WHERE id = :id AND shut_out_at IS NULL")
                .bind("now", now)
                .bind("id", id)
                .execute());
    }

    /** The tablet that shows this secret and was not shut out. */
    Optional<Tablet> findWelcome(String secret, Instant now) {
        Optional<Tablet> tablet = ledger.read(handle -> handle.createQuery("""
                        SELECT id, name, paired_at, seen_at, shut_out_at FROM tablet
                        WHERE secret_sha256 = :secret AND shut_out_at IS NULL
                        """)
                .bind("secret", Secret.sha256(secret))
                .mapTo(Tablet.class)
                .findOne());
        tablet.filter(one -> one.seenAt().isBefore(now.minus(SEEN_WITHIN))).ifPresent(one -> seen(one.id(), now));
        return tablet;
    }

    private void seen(long id, Instant now) {
        ledger.change(handle -> handle.createUpdate("UPDATE tablet SET seen_at = :now WHERE id = :id")
                .bind("now", now)
                .bind("id", id)
                .execute());
    }
}
