package afterlength.workshop.examination;

import afterlength.sight.camera.Pixel;
import afterlength.workshop.desk.InstrumentView;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Keeps marks. Rows are only ever added: correcting, withdrawing and taking back a withdrawal each add a row that names the one it
 * replaces, and a row can be replaced only once.
 */
public final class MarkStore {
    private final Ledger ledger;

    public MarkStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public DrawnMark get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM mark WHERE id = :id")
                        .bind("id", id)
                        .mapTo(DrawnMark.class)
                        .findOne())
                .orElseThrow(() -> new NotHere("mark", id));
    }

    /** The marks of a visit that hold, on whatever picture, in the order in which they were first drawn. */
    public List<DrawnMark> listNow(long visitId) {
        return listHistories(visitId).stream()
                .filter(History::holds)
                .map(History::latest)
                .toList();
    }

    public List<DrawnMark> listOnPhotograph(long visitId, long photographId) {
        return listNow(visitId).stream()
                .filter(mark -> mark.photographId() != null && mark.photographId() == photographId)
                .toList();
    }

    public List<DrawnMark> listOnDrawing(long visitId, InstrumentView view) {
        return listNow(visitId).stream().filter(mark -> mark.drawing() == view).toList();
    }

    /** All marks with all their earlier forms, the withdrawn ones too. */
    public List<History<DrawnMark>> listHistories(long visitId) {
        return History.of(
                ledger.read(handle -> handle.createQuery("SELECT * FROM mark WHERE visit_id = :visit ORDER BY id")
                        .bind("visit", visitId)
                        .mapTo(DrawnMark.class)
                        .list()));
    }

    /** All forms of the mark that this entry belongs to. */
    public History<DrawnMark> history(long markId) {
        return listHistories(get(markId).visitId()).stream()
                .filter(history -> history.contains(markId))
                .findFirst()
                .orElseThrow(() -> new NotHere("mark", markId));
    }

    /**
     * Writes a crack marked on a photograph that shows no card, so that nothing is measured; answers its id.
     *
     * @param points in pixels of the upright picture
     */
    public long addCrack(long visitId, long photographId, long findingId, List<Pixel> points, String hand, Instant at) {
        return add(new DrawnMark(
                0,
                visitId,
                null,
                false,
                photographId,
                null,
                findingId,
                MarkTool.CRACK,
                SvgSelector.of(MarkTool.CRACK, points),
                ArchHeight.UNKNOWN,
                null,
                null,
                null,
                null,
                null,
                "",
                hand,
                at));
    }

    /** Writes a new mark and answers its id; the id it carries is not looked at. */
    public long add(DrawnMark mark) {
        return ledger.write(handle -> insert(handle, mark));
    }

    /** Writes a correction. Answers nothing, and changes nothing, when the entry it names has been replaced meanwhile. */
    public Optional<Long> correct(DrawnMark correction) {
        Long replaced = correction.replaces();
        if (replaced == null) {
            throw new IllegalArgumentException("a correction names the entry it replaces");
        }
        return ledger.write(
                handle -> isReplaced(handle, replaced) ? Optional.empty() : Optional.of(insert(handle, correction)));
    }

    /** Withdraws a mark; its points stay readable. Nothing happens when it was withdrawn already. */
    public void withdraw(long markId, Instant at) {
        follow(markId, true, at);
    }

    /** Takes a withdrawal back. Nothing happens when the mark holds. */
    public void bringBack(long markId, Instant at) {
        follow(markId, false, at);
    }

    private void follow(long markId, boolean withdrawn, Instant at) {
        DrawnMark latest = history(markId).latest();
        if (latest.withdrawn() != withdrawn) {
            correct(latest.again(latest.id(), withdrawn, at));
        }
    }

    private static boolean isReplaced(Handle handle, long id) {
        return handle.createQuery("SELECT count(*) FROM mark WHERE replaces = :id")
                        .bind("id", id)
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    private static long insert(Handle handle, DrawnMark mark) {
        return handle.createUpdate("""
                        INSERT INTO mark (visit_id, replaces, withdrawn, photograph_id, drawing, finding_id, tool, selector, arch, height_mm,
                          size_mm, size_plus_minus_mm, area_mm2, area_plus_minus_mm2, remark, hand, written_at)
                        VALUES (:visitId, :replaces, :withdrawn, :photographId, :drawing, :findingId, :tool, :selector, :arch, :heightMm,
                          :sizeMm, :sizePlusMinusMm, :areaMm2, :areaPlusMinusMm2, :remark, :hand, :writtenAt)
                        """)
                .bindMethods(mark)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }
}
