package afterlength.workshop.setup;

import afterlength.craft.setup.FittedString;
import afterlength.craft.setup.StringPull;
import afterlength.workshop.ledger.Ledger;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/** Keeps set-ups. Rows are only added; the latest one of a visit and moment holds. */
public final class SetupStore {
    private final Ledger ledger;

    public SetupStore(Ledger ledger) {
        this.ledger = ledger;
    }

    private record StringRow(
            String name, double diameterMm, @Nullable Double tensionN) {
        FittedString fitted() {
            return tensionN == null
                    ? FittedString.ofDiameter(name, diameterMm)
                    : FittedString.ofTension(name, diameterMm, tensionN);
        }
    }

    public Optional<Setup> findNow(long visitId, SetupMoment moment) {
        return ledger.read(handle -> handle.createQuery("""
                        SELECT * FROM setup_now WHERE visit_id = :visit AND moment = :moment ORDER BY id DESC LIMIT 1
                        """)
                .bind("visit", visitId)
                .bind("moment", moment)
                .mapTo(SetupRow.class)
                .findOne()
                .map(row -> row.withStrings(strings(handle, row.id()))));
    }

    /** Every saving of a visit, the earliest first. */
    public List<Setup> listHistory(long visitId) {
        return ledger.read(handle -> handle
                .createQuery("SELECT * FROM setup WHERE visit_id = :visit ORDER BY id")
                .bind("visit", visitId)
                .mapTo(SetupRow.class)
                .list()
                .stream()
                .map(row -> row.withStrings(strings(handle, row.id())))
                .toList());
    }

    /** Adds a saving; it replaces the one that held for this visit and moment. */
    public void save(Setup setup) {
        ledger.change(handle -> {
            long id = handle.createUpdate("""
                            INSERT INTO setup (visit_id, replaces, moment, speaking_length_mm, board_length_mm, board_radius_mm,
                              nut_spacing_mm, bridge_spacing_mm, nut_clearance_bass_mm, nut_clearance_treble_mm,
                              clearance_bass_mm, clearance_treble_mm, clearance_convention, projection_mm, groove_fraction,
                              crown_radius_mm, saved_at, hand)
                            VALUES (:visitId,
                              (SELECT max(id) FROM setup_now WHERE visit_id = :visitId AND moment = :moment),
                              :moment, :speakingLengthMm, :boardLengthMm, :boardRadiusMm, :nutSpacingMm, :bridgeSpacingMm,
                              :nutClearanceBassMm, :nutClearanceTrebleMm, :clearanceBassMm, :clearanceTrebleMm,
                              :clearanceConvention, :projectionMm, :grooveFraction, :crownRadiusMm, :savedAt, :hand)
                            """)
                    .bindMap(SetupRow.of(setup).columns())
                    .executeAndReturnGeneratedKeys("id")
                    .mapTo(Long.class)
                    .one();
            addStrings(handle, id, setup);
        });
    }

    private static void addStrings(Handle handle, long setupId, Setup setup) {
        List<FittedString> strings = setup.inputs().strings();
        for (int position = 0; position < strings.size(); position++) {
            FittedString string = strings.get(position);
            handle.createUpdate("""
                            INSERT INTO setup_string (setup_id, position, name, diameter_mm, tension_n)
                            VALUES (:setup, :position, :name, :diameter, :tension)
                            """)
                    .bind("setup", setupId)
                    .bind("position", position)
                    .bind("name", string.name())
                    .bind("diameter", string.diameter_mm())
                    .bind("tension", string.pull() instanceof StringPull.Tension known ? known.tension_N() : null)
                    .execute();
        }
    }

    private static List<FittedString> strings(Handle handle, long setupId) {
        return handle
                .createQuery(
                        "SELECT name, diameter_mm, tension_n FROM setup_string WHERE setup_id = :setup ORDER BY position")
                .bind("setup", setupId)
                .mapTo(StringRow.class)
                .list()
                .stream()
                .map(StringRow::fitted)
                .toList();
    }
}
