package afterlength.workshop.agreement;

import afterlength.workshop.ledger.Ledger;
import java.util.List;
import java.util.Optional;

/** Keeps the clamps on the shelf; one that was put away is still known to the studies that used it. */
public final class ClampStore {
    private final Ledger ledger;

    public ClampStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public List<ShopClamp> list() {
        return ledger.read(
                handle -> handle.createQuery("SELECT * FROM clamp WHERE put_away = 0 ORDER BY throat_mm, name, id")
                        .mapTo(ShopClamp.class)
                        .list());
    }

    public Optional<ShopClamp> find(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM clamp WHERE id = :id")
                .bind("id", id)
                .mapTo(ShopClamp.class)
                .findOne());
    }

    public long add(ShopClamp clamp) {
        return ledger.write(handle -> handle.createUpdate("""
                        INSERT INTO clamp (name, throat_mm, jaw_length_mm, jaw_width_mm, jaw_height_mm, arm_mm, arm_width_mm)
                        VALUES (:name, :throatMm, :jawLengthMm, :jawWidthMm, :jawHeightMm, :armMm, :armWidthMm)
                        """)
                .bindMethods(clamp)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one());
    }

    /** A clamp is measured anew when a jaw was changed. */
    public void change(ShopClamp clamp) {
        ledger.change(handle -> handle.createUpdate("""
                        UPDATE clamp SET name = :name, throat_mm = :throatMm, jaw_length_mm = :jawLengthMm, jaw_width_mm = :jawWidthMm,
                          jaw_height_mm = :jawHeightMm, arm_mm = :armMm, arm_width_mm = :armWidthMm WHERE id = :id
                        """).bindMethods(clamp).execute());
    }

    public void putAway(long id) {
        ledger.change(handle -> handle.createUpdate("UPDATE clamp SET put_away = 1 WHERE id = :id")
                .bind("id", id)
                .execute());
    }
}
