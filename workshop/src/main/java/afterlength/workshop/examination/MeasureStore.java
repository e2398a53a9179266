package afterlength.workshop.examination;

import afterlength.workshop.desk.NotHere;
import afterlength.workshop.ledger.Ledger;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Keeps measures, in the same way as {@link FindingStore} keeps findings: rows are only ever added. */
public final class MeasureStore {
    private final Ledger ledger;

    public MeasureStore(Ledger ledger) {
        this.ledger = ledger;
    }

    /** The measures that hold, in the order in which they were first written. */
    public List<Measure> listNow(long visitId) {
        return listHistories(visitId).stream()
                .filter(History::holds)
                .map(History::latest)
                .toList();
    }

    /** All measures with all their wordings, the withdrawn ones too. */
    public List<History<Measure>> listHistories(long visitId) {
        return History.of(
                ledger.read(handle -> handle.createQuery("SELECT * FROM measure WHERE visit_id = :visit ORDER BY id")
                        .bind("visit", visitId)
                        .mapTo(Measure.class)
                        .list()));
    }

    /** All wordings of the measure that this entry belongs to. */
    public History<Measure> history(long measureId) {
        return listHistories(get(measureId).visitId()).stream()
                .filter(history -> history.contains(measureId))
                .findFirst()
                .orElseThrow(() -> new NotHere("measure", measureId));
    }

    /** The measure of a quantity that holds; the one written last when there are several. */
    public Optional<Measure> findNow(long visitId, Quantity quantity, Moment moment) {
        return listNow(visitId).stream()
                .filter(measure -> measure.quantity().equals(quantity.name()) && measure.moment() == moment)
                .reduce((first, second) -> second);
    }

    /**
     * What was measured both before and after work in the same unit, in the order of the measures before work. Of several measures
     * of one quantity at one moment the one written last counts.
     */
    public List<MeasurePair> pairs(long visitId) {
        Map<String, Measure> before = latestOf(visitId, Moment.BEFORE);
        Map<String, Measure> after = latestOf(visitId, Moment.AFTER);
        return before.values().stream()
                .flatMap(was -> Optional.ofNullable(after.get(was.kind())).map(is -> new MeasurePair(was, is)).stream())
                .toList();
    }

    private Map<String, Measure> latestOf(long visitId, Moment moment) {
        Map<String, Measure> latest = new LinkedHashMap<>();
        listNow(visitId).stream()
                .filter(measure -> measure.moment() == moment)
                .forEach(measure -> latest.put(measure.kind(), measure));
        return latest;
    }

    public Measure get(long id) {
        return ledger.read(handle -> handle.createQuery("SELECT * FROM measure WHERE id = :id")
                        .bind("id", id)
                        .mapTo(Measure.class)
                        .findOne())
                .orElseThrow(() -> new NotHere("measure", id));
    }

    /** Writes a new measure and answers its id; the id it carries is not looked at. */
    public long add(Measure measure) {
        return ledger.write(handle -> insert(handle, measure));
    }

    /**
     * Writes a correction, which names the entry it replaces. Answers nothing, and changes nothing, when that entry has been
     * replaced meanwhile.
     */
    public Optional<Long> correct(Measure correction) {
        Long replaced = correction.replaces();
        if (replaced == null) {
            throw new IllegalArgumentException("a correction names the entry it replaces");
        }
        return ledger.write(
                handle -> isReplaced(handle, replaced) ? Optional.empty() : Optional.of(insert(handle, correction)));
    }

    /** Withdraws a measure; it stays readable. Nothing happens when it was withdrawn already. */
    public void withdraw(long measureId, Instant at) {
        follow(measureId, true, at);
    }

    /** Takes a withdrawal back. Nothing happens when the measure holds. */
    public void bringBack(long measureId, Instant at) {
        follow(measureId, false, at);
    }

    private void follow(long measureId, boolean withdrawn, Instant at) {
        Measure latest = history(measureId).latest();
        if (latest.withdrawn() != withdrawn) {
            correct(latest.again(latest.id(), withdrawn, at));
        }
    }

    private static boolean isReplaced(Handle handle, long id) {
        return handle.createQuery("SELECT count(*) FROM measure WHERE replaces = :id")
                        .bind("id", id)
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    private static long insert(Handle handle, Measure measure) {
        return handle.createUpdate("""
                        INSERT INTO measure (visit_id, replaces, withdrawn, moment, quantity, value, unit, plus_minus, method,
                          temperature_c, humidity_pct, taken_at, hand, written_at)
                        VALUES (:visitId, :replaces, :withdrawn, :moment, :quantity, :value, :unit, :plusMinus, :method,
                          :temperatureC, :humidityPct, :takenAt, :hand, :writtenAt)
                        """)
                .bindMethods(measure)
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }
}
