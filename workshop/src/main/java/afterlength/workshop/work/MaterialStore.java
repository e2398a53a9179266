package afterlength.workshop.work;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Keeps the materials on the shelf. What the diary says of a material is copied there and does not change with the shelf. */
public final class MaterialStore {
    private final Ledger ledger;

    public MaterialStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** What stands on the shelf. */
    public List<Material> list() {
        return list(false);
    }

    public List<Material> listPutAway() {
        return list(true);
    }

    public Material get(long id) {
        return ledger.read(handle -> get(handle, id));
    }

    public Material add(Material material) {
        return ledger.write(handle -> {
            long id = handle.createUpdate("""
                            INSERT INTO material (name, kind, batch, reversible_with, remark)
                            VALUES (:name, :kind, :batch, :reversibleWith, :remark)
                            """)
                    .bindMethods(material)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            return get(handle, id);
        });
    }

    /** Answers false, and changes nothing, when somebody else has changed the material meanwhile. */
    public boolean change(Material material) {
        return ledger.write(
                handle -> handle.createUpdate("""
                                UPDATE material SET name = :name, kind = :kind, batch = :batch,
                                  reversible_with = :reversibleWith, remark = :remark, version = version + 1
                                WHERE id = :id AND version = :version
                                """).bindMethods(material).execute() == 1);
    }

    public void putAway(long id) {
        put(id, true);
    }

    public void takeBack(long id) {
        put(id, false);
    }

    private void put(long id, boolean away) {
        ledger.change(handle -> handle.createUpdate(
                        "UPDATE material SET put_away = :away, version = version + 1 WHERE id = :id")
                .bind("away", away)
                .bind("id", id)
                .execute());
    }

    private List<Material> list(boolean away) {
        return ledger.read(handle ->
                handle.createQuery("""
                        SELECT * FROM material WHERE put_away = :away ORDER BY kind COLLATE NOCASE, name COLLATE NOCASE, id
                        """).bind("away", away).mapTo(Material.class).list());
    }

    private static Material get(Handle handle, long id) {
        return handle.createQuery("SELECT * FROM material WHERE id = :id")
                .bind("id", id)
                .mapTo(Material.class)
                .findOne()
                .orElseThrow(() -> new NotHere("material", id));
    }
}
