package afterlength.workshop.retouch;

import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.Writing;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps the coats of a retouch and what the place looked like after each. A coat and its words in the diary are one writing. */
public final class CoatStore {
    private final Ledger ledger;

    public CoatStore(Ledger ledger) {
        this.ledger = ledger;
    }

    private record CoatRow(
            long id, long diaryId, String isolating, String reversibleWith, Instant laidAt, String hand) {}

    /** The coats of a retouch, the first one first. */
    List<LaidCoat> list(long retouchId) {
        return ledger.read(handle -> handle
                .createQuery("SELECT * FROM retouch_coat WHERE retouch_id = :retouch ORDER BY id")
                .bind("retouch", retouchId)
                .mapTo(CoatRow.class)
                .list()
                .stream()
                .map(row -> coat(handle, row))
                .toList());
    }

    /** Writes a coat into the diary of the visit and beside its retouch. */
    long lay(long visitId, CoatToLay coat, Instant now) {
        return ledger.write(handle -> {
            long diaryId = DiaryStore.write(handle, writing(visitId, coat), now).id();
            long id = insert(handle, coat, diaryId);
            for (CoatPart part : coat.parts()) {
                handle.execute(
                        "INSERT INTO retouch_coat_part (coat_id, colour_id, coats) VALUES (?, ?, ?)",
                        id,
                        part.colourId(),
                        part.coats());
            }
            return id;
        });
    }

    void measured(long coatId, ColourReading reading, String hand, Instant now) {
        ledger.change(handle -> handle.createUpdate("""
                        INSERT INTO retouch_reading (coat_id, colour_class, spectral, colour, written_at, hand)
                        VALUES (:coat, :colourClass, :spectral, :colour, :now, :hand)
                        """)
                .bindMethods(reading)
                .bind("coat", coatId)
                .bind("now", now.truncatedTo(ChronoUnit.SECONDS))
                .bind("hand", hand)
                .execute());
    }

    private static Writing writing(long visitId, CoatToLay coat) {
        String layer = "Over: " + coat.isolating() + ".";
        String remark = coat.remark().isEmpty() ? layer : layer + "\n" + coat.remark();
        return Writing.note(visitId, coat.laidAt(), coat.hand(), remark)
                .withMaterial(coat.words(), coat.reversibleWith());
    }

    private static long insert(Handle handle, CoatToLay coat, long diaryId) {
        return handle.createUpdate("""
                        INSERT INTO retouch_coat (retouch_id, diary_id, isolating, reversible_with, laid_at, hand)
                        VALUES (:retouchId, :diary, :isolating, :reversibleWith, :laidAt, :hand)
                        """)
                .bindMethods(coat)
                .bind("diary", diaryId)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }

    private static LaidCoat coat(Handle handle, CoatRow row) {
        List<CoatPart> parts = handle.createQuery(
                        "SELECT colour_id, coats FROM retouch_coat_part WHERE coat_id = :coat ORDER BY coats DESC")
                .bind("coat", row.id())
                .mapTo(CoatPart.class)
                .list();
        Optional<ColourReading> reading = handle.createQuery("SELECT * FROM retouch_reading_now WHERE coat_id = :coat")
                .bind("coat", row.id())
                .mapTo(ColourReading.class)
                .findOne();
        return new LaidCoat(
                row.id(),
                row.diaryId(),
                row.isolating(),
                row.reversibleWith(),
                row.laidAt(),
                row.hand(),
                parts,
                reading);
    }
}
