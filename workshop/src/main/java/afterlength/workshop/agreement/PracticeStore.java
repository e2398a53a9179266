package afterlength.workshop.agreement;

import afterlength.craft.estimate.HandsOn;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jdbi.v3.core.Handle;

/** Keeps the shop's own times; each replaces the one before, and all stay. */
public final class PracticeStore {
    private final Ledger ledger;

    public PracticeStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public PracticeTimes get() {
        return ledger.read(PracticeStore::of);
    }

    /** Within a transaction of another stage. */
    public static PracticeTimes of(Handle handle) {
        List<PracticeTime> own = handle.createQuery("SELECT * FROM practice_time_now ORDER BY id")
                .map((row, context) -> new PracticeTime(
                        row.getString("template"),
                        row.getString("step"),
                        new HandsOn(
                                row.getDouble("hands_low_min"),
                                row.getDouble("hands_typical_min"),
                                row.getDouble("hands_high_min")),
                        new Wait(
                                row.getDouble("wait_low_h"),
                                row.getDouble("wait_typical_h"),
                                row.getDouble("wait_high_h")),
                        row.getString("hand"),
                        Instant.parse(row.getString("written_at"))))
                .list();
        return new PracticeTimes(own);
    }

    public void put(PracticeTime time) {
        ledger.change(handle -> add(handle, time, false));
    }

    /** Back to common practice. */
    public void withdraw(PracticeTime time) {
        ledger.change(handle -> add(handle, time, true));
    }

    private static void add(Handle handle, PracticeTime time, boolean withdrawn) {
        handle.createUpdate("""
                        INSERT INTO practice_time (replaces, withdrawn, template, step, hands_low_min, hands_typical_min,
                          hands_high_min, wait_low_h, wait_typical_h, wait_high_h, hand, written_at)
                        VALUES ((SELECT max(id) FROM practice_time WHERE template = :template AND step = :step), :withdrawn,
                          :template, :step, :handsLow, :handsTypical, :handsHigh, :waitLow, :waitTypical, :waitHigh,
                          :hand, :now)
                        """)
                .bind("withdrawn", withdrawn)
                .bind("template", time.template())
                .bind("step", time.step())
                .bind("handsLow", time.handsOn().low_min())
                .bind("handsTypical", time.handsOn().typical_min())
                .bind("handsHigh", time.handsOn().high_min())
                .bind("waitLow", time.waiting().low_h())
                .bind("waitTypical", time.waiting().typical_h())
                .bind("waitHigh", time.waiting().high_h())
                .bind("hand", time.hand())
                .bind("now", time.writtenAt().truncatedTo(ChronoUnit.SECONDS))
                .execute();
    }
}
