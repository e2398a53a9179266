package afterlength.workshop.archive;

import afterlength.workshop.ledger.Ledger;
import java.util.UUID;

/** The number of a shop from which the names in its archives begin; drawn when its first archive is made, kept ever after. */
final class ArchiveNumber {
    static final String SETTING = "archive_number";

    private ArchiveNumber() {}

    static UUID of(Ledger ledger) {
        String kept = ledger.write(handle -> {
            handle.createUpdate(
                            "INSERT INTO setting (name, value) VALUES (:name, :value) ON CONFLICT (name) DO NOTHING")
                    .bind("name", SETTING)
                    .bind("value", UUID.randomUUID().toString())
                    .execute();
            return handle.createQuery("SELECT value FROM setting WHERE name = :name")
                    .bind("name", SETTING)
                    .mapTo(String.class)
                    .one();
        });
        return UUID.fromString(kept);
    }
}
