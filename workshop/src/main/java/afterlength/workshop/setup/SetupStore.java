package afterlength.workshop.setup;

import afterlength.workshop.ledger.Ledger;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;

/** Keeps set-ups. Rows are only added; the latest one of a visit and moment holds. */
public final class SetupStore {
    private final Ledger ledger;

    public SetupStore(Ledger ledger) {
        this.ledger = ledger;
    }

    public Optional<Setup> findNow(long visitId, SetupMoment moment) {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT * FROM setup_now WHERE visit_id = :visit AND moment = :moment ORDER BY id DESC LIMIT 1
                        """)
                .bind("visit", visitId)
                .bind("moment", moment)
                .mapTo(SetupRow.class)
                .findOne()
                .map(row -> whole(handle, row)));
    }

    /** The latest saving of an instrument in a visit other than this one: where its next set-up starts from. */
    public Optional<Setup> findEarlier(long instrumentId, long visitId) {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT s.* FROM setup_now s JOIN visit v ON v.id = s.visit_id
                        WHERE v.instrument_id = :instrument AND v.id <> :visit ORDER BY s.id DESC LIMIT 1
                        """)
                .bind("instrument", instrumentId)
                .bind("visit", visitId)
                .mapTo(SetupRow.class)
                .findOne()
                .map(row -> whole(handle, row)));
    }

    /** Every saving of a visit, the earliest first. */
    public List<Setup> listHistory(long visitId) {
        return ledger.read(handle -> handle
                .createQuery("SELECT * FROM setup WHERE visit_id = :visit ORDER BY id")
                .bind("visit", visitId)
                .mapTo(SetupRow.class)
                .list()
                .stream()
                .map(row -> whole(handle, row))
                .toList());
    }

    /** Adds a saving; it replaces the one that held for this visit and moment. */
    public void save(Setup setup) {
        ledger.change(handle -> {
            long id = handle.createUpdate("""
                            INSERT INTO setup (visit_id, replaces, moment, speaking_length_mm, board_length_mm, board_radius_mm,
                              nut_spacing_mm, bridge_spacing_mm, nut_clearance_bass_mm, nut_clearance_treble_mm,
                              clearance_bass_mm, clearance_treble_mm, clearance_convention, projection_mm, groove_fraction,
                              crown_radius_mm, crown, crown_template, spacing, saved_at, hand)
                            VALUES (:visitId,
                              (SELECT max(id) FROM setup_now WHERE visit_id = :visitId AND moment = :moment),
                              :moment, :speakingLengthMm, :boardLengthMm, :boardRadiusMm, :nutSpacingMm, :bridgeSpacingMm,
                              :nutClearanceBassMm, :nutClearanceTrebleMm, :clearanceBassMm, :clearanceTrebleMm,
                              :clearanceConvention, :projectionMm, :grooveFraction, :crownRadiusMm, :crown, :crownTemplate,
                              :spacing, :savedAt, :hand)
                            """)
                    .bindMap(SetupRow.of(setup).columns())
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            addStrings(handle, id, StringRows.of(setup.bench()));
            addReadings(handle, id, setup.bench().readings());
        });
    }

    private static void addStrings(Handle handle, long setupId, List<StringRow> strings) {
        for (int position = 0; position < strings.size(); position++) {
            handle.createUpdate("""
                            INSERT INTO setup_string (setup_id, position, name, diameter_mm, tension_n, note, linear_density_g_m,
                              nut_y_mm, bridge_y_mm)
                            VALUES (:setup, :position, :name, :diameter, :tension, :note, :density, :nutY, :bridgeY)
                            """)
                    .bindMap(strings.get(position).columns(setupId, position))
                    .execute();
        }
    }

    private static void addReadings(Handle handle, long setupId, Map<BenchReading, Double> readings) {
        readings.forEach((reading, value) -> handle.createUpdate(
                        "INSERT INTO setup_reading (setup_id, reading, value) VALUES (:setup, :reading, :value)")
                .bind("setup", setupId)
                .bind("reading", reading)
                .bind("value", value)
                .execute());
    }

    private static Setup whole(Handle handle, SetupRow row) {
        return row.with(strings(handle, row.id()), readings(handle, row.id()));
    }

    private static List<StringRow> strings(Handle handle, long setupId) {
        return handle.createQuery("SELECT * FROM setup_string WHERE setup_id = :setup ORDER BY position")
                .bind("setup", setupId)
                .mapTo(StringRow.class)
                .list();
    }

    private record ReadingRow(BenchReading reading, double value) {}

    private static Map<BenchReading, Double> readings(Handle handle, long setupId) {
        return handle
                .createQuery("SELECT reading, value FROM setup_reading WHERE setup_id = :setup")
                .bind("setup", setupId)
                .mapTo(ReadingRow.class)
                .stream()
                .collect(Collectors.toMap(ReadingRow::reading, ReadingRow::value));
    }
}
