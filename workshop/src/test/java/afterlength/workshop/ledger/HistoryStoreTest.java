package afterlength.workshop.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What was seen, measured, agreed and done is never overwritten, whoever asks: the database itself refuses. */
class HistoryStoreTest {
    @TempDir
    Path folder;

    private Ledger ledger;

    @BeforeEach
    void aShopWithOneRowOfEach() {
        ledger = Ledger.open(ShopFolder.open(folder));
        ledger.change(handle -> OldShops.rows().forEach(handle::execute));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "finding",
                "finding_photograph",
                "measure",
                "sitting",
                "agreement",
                "agreement_line",
                "diary_entry",
                "setup",
                "setup_string",
                "setup_reading",
                "palette_film",
                "retouch",
                "retouch_colour",
                "retouch_coat",
                "retouch_coat_part",
                "retouch_reading",
                "varnish_part",
                "varnish_coat",
                "varnish_area",
                "mark",
                "card_print",
                "camera_calibration",
                "camera_calibration_picture",
                "camera_calibration_standing",
                "bench_plan",
                "bench_plan_piece",
                "bench_plan_visit",
                "absence",
                "visit_urgency",
                "practice_time",
                "advice_decision",
                "closing_tick",
                "invoice",
                "invoice_line",
                "handover"
            })
    void aRowOfHistoryCanNeitherBeChangedNorRemoved(String table) {
        assertThatThrownBy(() -> ledger.change(handle -> handle.execute("UPDATE " + table + " SET rowid = rowid")))
                .hasMessageContaining("history is kept: " + table);
        assertThatThrownBy(() -> ledger.change(handle -> handle.execute("DELETE FROM " + table)))
                .hasMessageContaining("history is kept: " + table);
    }

    @Test
    void aCorrectionReplacesAndBothStay() {
        ledger.change(
                handle -> handle.execute(
                        "INSERT INTO measure (visit_id, replaces, moment, quantity, value, unit, plus_minus,"
                                + " method, taken_at, hand, written_at) VALUES (1, 1, 'BEFORE', 'q', 1.7, 'mm', 0.1, '', '2026-11-04T10:00:00Z', 'h', '2026-11-04T10:00:00Z')"));
        assertThat(values("SELECT value FROM measure_now")).containsExactly(1.7);
        assertThat(values("SELECT value FROM measure ORDER BY id")).containsExactly(1.5, 1.7);
    }

    @Test
    void oneRowHasAtMostOneSuccessor() {
        String correction =
                "INSERT INTO measure (visit_id, replaces, moment, quantity, value, unit, plus_minus, method, taken_at, hand, written_at)"
                        + " VALUES (1, 1, 'BEFORE', 'q', 1.7, 'mm', 0.1, '', '2026-11-04T10:00:00Z', 'h', '2026-11-04T10:00:00Z')";
        ledger.change(handle -> handle.execute(correction));
        assertThatThrownBy(() -> ledger.change(handle -> handle.execute(correction)))
                .hasMessageContaining("UNIQUE constraint failed: measure.replaces");
    }

    @Test
    void foreignKeysAreGuardedOnEveryConnection() {
        assertThatThrownBy(
                        () -> ledger.change(handle -> handle.execute("INSERT INTO finding_photograph VALUES (1, 99)")))
                .hasMessageContaining("FOREIGN KEY constraint failed");
    }

    @Test
    void aWriteThatFailsHalfWayLeavesNothing() {
        assertThatThrownBy(() -> ledger.change(handle -> {
                    handle.execute("INSERT INTO setting VALUES ('a', 'b')");
                    handle.execute("INSERT INTO finding_photograph VALUES (1, 99)");
                }))
                .hasMessageContaining("FOREIGN KEY");
        int kept = ledger.read(handle -> handle.createQuery("SELECT count(*) FROM setting WHERE name = 'a'")
                .mapTo(Integer.class)
                .one());
        assertThat(kept).isZero();
    }

    private List<Double> values(String sql) {
        return ledger.read(handle -> handle.createQuery(sql).mapTo(Double.class).list());
    }
}
