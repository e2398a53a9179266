package afterlength.workshop.retouch;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Keeps what mended lines read. Rows are only added: one that was wrong is taken out by a row that replaces it. */
public final class MendedLineStore {
    private final Ledger ledger;

    public MendedLineStore(Ledger ledger) {
        this.ledger = ledger;
    }

    private record Row(
            long id,
            long visitId,
            @org.jspecify.annotations.Nullable Long replaces,
            boolean withdrawn,
            String place,
            Instant writtenAt,
            String hand) {}

    /** The lines of a visit that hold, in the order of their writing. */
    public List<MendedLine> listNow(long visitId) {
        return ledger.read(handle -> handle
                .createQuery("SELECT * FROM mended_line_now WHERE visit_id = :visit ORDER BY id")
                .bind("visit", visitId)
                .mapTo(Row.class)
                .list()
                .stream()
                .map(row -> line(handle, row))
                .toList());
    }

    MendedLine get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM mended_line WHERE id = :id")
                .bind("id", id)
                .mapTo(Row.class)
                .findOne()
                .map(row -> line(handle, row))
                .orElseThrow(() -> new NotHere("mended line", id)));
    }

    /** Writes a line down and answers its number; the number it carries is not looked at. */
    public long add(MendedLine line) {
        return ledger.write(handle -> insert(handle, line));
    }

    /** Takes a line out. Nothing happens when it was taken out, or replaced, already. */
    void withdraw(long id, Instant now) {
        MendedLine held = get(id);
        if (listNow(held.visitId()).stream().anyMatch(line -> line.id() == id)) {
            add(held.again(true, now));
        }
    }

    private static long insert(Handle handle, MendedLine line) {
        long id = handle.createUpdate("""
                        INSERT INTO mended_line (visit_id, replaces, withdrawn, place, written_at, hand)
                        VALUES (:visitId, :replaces, :withdrawn, :place, :writtenAt, :hand)
                        """)
                .bindMethods(line)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        insert(handle, id, "BEFORE", line.before());
        insert(handle, id, "AFTER", line.after());
        return id;
    }

    private static void insert(Handle handle, long lineId, String moment, LineSight sight) {
        handle.createUpdate("""
                        INSERT INTO mended_line_sight (line_id, moment, mark_id, high, plus_minus, mean, control, share_above,
                          pixels_per_mm, across, untouched, caveats)
                        VALUES (:line, :moment, :markId, :high, :plusMinus, :mean, :control, :shareAbove,
                          :pixelsPerMm, :across, :untouched, :caveats)
                        """)
                .bindMethods(sight)
                .bind("line", lineId)
                .bind("moment", moment)
                .execute();
    }

    private static MendedLine line(Handle handle, Row row) {
        return new MendedLine(
                row.id(),
                row.visitId(),
                row.replaces(),
                row.withdrawn(),
                row.place(),
                sight(handle, row.id(), "BEFORE"),
                sight(handle, row.id(), "AFTER"),
                row.writtenAt(),
                row.hand());
    }

    private static LineSight sight(Handle handle, long lineId, String moment) {
        return handle.createQuery("SELECT * FROM mended_line_sight WHERE line_id = :line AND moment = :moment")
                .bind("line", lineId)
                .bind("moment", moment)
                .mapTo(LineSight.class)
                .one();
    }
}
