package afterlength.workshop.instrument;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Keeps owners. */
public final class OwnerStore {
    private final Ledger ledger;

    public OwnerStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public List<Owner> list() {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM owner ORDER BY name COLLATE NOCASE, id")
                .mapTo(Owner.class)
                .list());
    }

    /** The first so many owners by name in whose name these words stand together. */
    public List<Owner> find(String words, int most) {
        return ledger.read(handle -> handle.createQuery(
                        "SELECT * FROM owner WHERE name LIKE :words ESCAPE '!' ORDER BY name COLLATE NOCASE, id LIMIT :most")
                .bind("words", "%" + LikeWords.pattern(words.strip()) + "%")
                .bind("most", most)
                .mapTo(Owner.class)
                .list());
    }

    public Owner get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM owner WHERE id = :id")
                        .bind("id", id)
                        .mapTo(Owner.class)
                        .findOne())
                .orElseThrow(() -> new NotHere("owner", id));
    }

    /** Answers false, and changes nothing, when somebody else has changed the owner meanwhile. */
    public boolean change(Owner owner) {
        return ledger.write(
                handle -> handle.createUpdate("""
                                UPDATE owner SET name = :name, email = :email, phone = :phone, address = :address,
                                                 remark = :remark, version = version + 1
                                WHERE id = :id AND version = :version
                                """).bindMethods(owner).execute() == 1);
    }

    static long add(Handle handle, Owner owner) {
        return handle.createUpdate("""
                        INSERT INTO owner (name, email, phone, address, remark)
                        VALUES (:name, :email, :phone, :address, :remark)
                        """)
                .bindMethods(owner)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }
}
