package afterlength.workshop.glue;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Sent;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SentOnce;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Keeps batches of glue, what was done to them and what was glued with them; all of it is history. */
public final class GlueStore {
    private final Ledger ledger;

    public GlueStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public Pot make(GlueBatch batch, PotEvent first) {
        return ledger.write(handle -> {
            long id = handle.createUpdate("""
                            INSERT INTO glue_batch
                              (name, strength_g, bloom_scale, flakes, dry_g, water_g, moisture_pct, remark, hand, made_at)
                            VALUES
                              (:name, :strengthG, :bloomScale, :flakes, :dryG, :waterG, :moisturePct, :remark, :hand, :madeAt)
                            """)
                    .bindMethods(batch)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            add(handle, new PotEvent(0, id, first.what(), first.potC(), first.dueAt(), first.hand(), first.at()));
            return pot(handle, id);
        });
    }

    public void add(PotEvent event) {
        ledger.change(handle -> add(handle, event));
    }

    /** The same of a tap that a screen may send again: one that was taken before writes nothing. */
    void add(PotEvent event, Sent sent) {
        ledger.change(handle -> {
            if (SentOnce.find(handle, sent.key()).isEmpty()) {
                add(handle, event);
                SentOnce.keep(handle, sent.key(), "", sent.at());
            }
        });
    }

    boolean wasSent(Sent sent) {
        return ledger.read(handle -> SentOnce.find(handle, sent.key()).isPresent());
    }

    private static void add(Handle handle, PotEvent event) {
        handle.createUpdate("""
                        INSERT INTO glue_event (batch_id, what, pot_c, due_at, hand, at)
                        VALUES (:batchId, :what, :potC, :dueAt, :hand, :at)
                        """).bindMethods(event).execute();
    }

    public Gluing add(Gluing gluing) {
        return ledger.write(handle -> {
            long id = handle.createUpdate("""
                            INSERT INTO gluing (replaces, withdrawn, batch_id, visit_id, joint, used_g, part_c, temperature_c,
                              humidity_pct, air_from, clamp_h, remark, hand, at, written_at)
                            VALUES (:replaces, :withdrawn, :batchId, :visitId, :joint, :usedG, :partC, :temperatureC,
                              :humidityPct, :airFrom, :clampH, :remark, :hand, :at, :writtenAt)
                            """)
                    .bindMethods(gluing)
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            return gluing(handle, id);
        });
    }

    public Gluing getGluing(long id) {
        return ledger.read(handle -> gluing(handle, id));
    }

    private static Gluing gluing(Handle handle, long id) {
        return handle.createQuery("SELECT * FROM gluing WHERE id = :id")
                .bind("id", id)
                .mapTo(Gluing.class)
                .findOne()
                .orElseThrow(() -> new NotHere("gluing", id));
    }

    /** What was glued on the instrument of a visit, in the order of gluing. */
    public List<Gluing> listOf(long visitId) {
        return ledger.read(
                handle -> handle.createQuery("SELECT * FROM gluing_now WHERE visit_id = :visit ORDER BY at, id")
                        .bind("visit", visitId)
                        .mapTo(Gluing.class)
                        .list());
    }

    public Pot get(long batchId) {
        return ledger.read(handle -> pot(handle, batchId));
    }

    /** The newest first. */
    public List<Pot> list() {
        return ledger.read(handle -> {
            Map<Long, List<PotEvent>> events = handle.createQuery("SELECT * FROM glue_event ORDER BY id")
                    .mapTo(PotEvent.class)
                    .collect(Collectors.groupingBy(PotEvent::batchId));
            Map<Long, List<Gluing>> gluings = handle.createQuery("SELECT * FROM gluing_now ORDER BY at, id")
                    .mapTo(Gluing.class)
                    .collect(Collectors.groupingBy(Gluing::batchId));
            return handle.createQuery("SELECT * FROM glue_batch ORDER BY id DESC")
                    .mapTo(GlueBatch.class)
                    .map(batch -> new Pot(
                            batch,
                            events.getOrDefault(batch.id(), List.of()),
                            gluings.getOrDefault(batch.id(), List.of())))
                    .list();
        });
    }

    public List<Pot> listOpen() {
        return list().stream().filter(pot -> pot.stage() != PotStage.ENDED).toList();
    }

    private static Pot pot(Handle handle, long id) {
        GlueBatch batch = handle.createQuery("SELECT * FROM glue_batch WHERE id = :id")
                .bind("id", id)
                .mapTo(GlueBatch.class)
                .findOne()
                .orElseThrow(() -> new NotHere("batch of glue", id));
        return new Pot(
                batch,
                handle.createQuery("SELECT * FROM glue_event WHERE batch_id = :id ORDER BY id")
                        .bind("id", id)
                        .mapTo(PotEvent.class)
                        .list(),
                handle.createQuery("SELECT * FROM gluing_now WHERE batch_id = :id ORDER BY at, id")
                        .bind("id", id)
                        .mapTo(Gluing.class)
                        .list());
    }
}
