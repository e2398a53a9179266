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
    /** One row in each table, as plain as the table allows. */
    private static final List<String> ROWS = List.of(
            "INSERT INTO owner (id, name, email, phone, address, remark) VALUES (1, 'n', '', '', '', '')",
            "INSERT INTO instrument (id, owner_id, kind, name, size_words, made_words, label_words, marks_words, story_told, story_documented)"
                    + " VALUES (1, 1, 'VIOLA', 'n', '', '', '', '', '', '')",
            "INSERT INTO visit (id, instrument_id, number, received_on, brought_by, reason, wish, accessories, condition_words)"
                    + " VALUES (1, 1, '2026-001', '2026-11-03', '', 'r', '', '', '')",
            "INSERT INTO photograph (id, visit_id, sha256, media_type, width_px, height_px, moment, view, caption, added_at)"
                    + " VALUES (1, 1, 'x', 'image/jpeg', 1, 1, 'BEFORE', '', '', '2026-11-03T10:00:00Z')",
            "INSERT INTO finding (id, visit_id, part, kind, place, size_reason, age, hinders_playing, gets_worse, observation,"
                    + " interpretation, seen_at, hand, written_at) VALUES (1, 1, 'belly', 'crack', '', '', 'OLD', 'NO', 'NO', 'o', '',"
                    + " '2026-11-03T10:00:00Z', 'h', '2026-11-03T10:00:00Z')",
            "INSERT INTO finding_photograph VALUES (1, 1)",
            "INSERT INTO measure (id, visit_id, moment, quantity, value, unit, plus_minus, method, taken_at, hand, written_at)"
                    + " VALUES (1, 1, 'BEFORE', 'q', 1.5, 'mm', 0.1, '', '2026-11-03T10:00:00Z', 'h', '2026-11-03T10:00:00Z')",
            "INSERT INTO sitting (id, visit_id, means, remark, sat_at, hand, written_at)"
                    + " VALUES (1, 1, 'daylight', '', '2026-11-03T10:00:00Z', 'h', '2026-11-03T10:00:00Z')",
            "INSERT INTO treatment (id, visit_id, position, tier, title, reason, if_left, undoing, reversibility, materials, template,"
                    + " minutes_low, minutes_high, material_minor) VALUES (1, 1, 1, 'SOUND', 't', '', '', 'YES', '', '', '', 1, 2, 0)",
            "INSERT INTO agreement (id, visit_id, scope, agreed_on, agreed_by, means, low_minor, expected_minor, high_minor, tax_permille,"
                    + " per_hour_minor, remark, written_at, hand) VALUES (1, 1, 's', '2026-11-03', 'n', 'm', 1, 2, 3, 0, 0, '', '2026-11-03T10:00:00Z', 'h')",
            "INSERT INTO agreement_line VALUES (1, 1, 1, 't', 1, 1, 2, 3)",
            "INSERT INTO diary_entry (id, visit_id, what, at, hand, material, remark, written_at)"
                    + " VALUES (1, 1, 'NOTE', '2026-11-03T10:00:00Z', 'h', '', '', '2026-11-03T10:00:00Z')",
            "INSERT INTO setup (id, visit_id, moment, speaking_length_mm, board_length_mm, board_radius_mm, nut_spacing_mm,"
                    + " bridge_spacing_mm, nut_clearance_bass_mm, nut_clearance_treble_mm, clearance_bass_mm, clearance_treble_mm,"
                    + " clearance_convention, projection_mm, groove_fraction, crown_radius_mm, saved_at, hand)"
                    + " VALUES (1, 1, 'AFTER', 370, 300, 42, 17, 37, 0.5, 0.4, 6, 4.5, 'SQUARE', 32, 0.33, 42, '2026-11-03T10:00:00Z', 'h')",
            "INSERT INTO setup_string (setup_id, position, name, diameter_mm) VALUES (1, 0, 'C', 1.2)",
            "INSERT INTO setup_reading VALUES (1, 'A4', 442)",
            "INSERT INTO palette_colour (id, name, medium, reversible_with, colour_class, spectral, absorption, scatter,"
                    + " largest_difference, written_at, hand) VALUES (1, 'n', '', '', 'INSTRUMENT', 1, '', '', 0, '2026-11-03T10:00:00Z', 'h')",
            "INSERT INTO palette_film VALUES (1, 0, 1, '', '', 0)",
            "INSERT INTO retouch (id, visit_id, place, ground_class, ground_spectral, ground, target_class, target_spectral, target,"
                    + " colorants, film_coats, written_at, hand)"
                    + " VALUES (1, 1, 'p', 'INSTRUMENT', 1, '', 'INSTRUMENT', 1, '', 3, 3, '2026-11-03T10:00:00Z', 'h')",
            "INSERT INTO retouch_colour VALUES (1, 1)",
            "INSERT INTO retouch_coat VALUES (1, 1, 1, '', '', '2026-11-03T10:00:00Z', 'h')",
            "INSERT INTO retouch_coat_part VALUES (1, 1, 0.5)",
            "INSERT INTO retouch_reading VALUES (1, 1, 'INSTRUMENT', 1, '', '2026-11-03T10:00:00Z', 'h')",
            "INSERT INTO varnish (id, name, remark, written_at, hand) VALUES (1, 'n', '', '2026-11-03T10:00:00Z', 'h')",
            "INSERT INTO varnish_part VALUES (1, 0, 'oil', 10, 930, 'OIL')",
            "INSERT INTO varnish_coat (id, varnish_id, laid_on, touch_dry_h, temperature_c, humidity_pct, remark, written_at, hand)"
                    + " VALUES (1, 1, '2026-11-03', 5, 20, 50, '', '2026-11-03T10:00:00Z', 'h')",
            "INSERT INTO varnish_area (id, visit_id, finding_id, varnish_id, area_cm2, plus_minus_cm2, dry_um, wet_coat_um, written_at,"
                    + " hand) VALUES (1, 1, 1, 1, 5, 1, 30, 40, '2026-11-03T10:00:00Z', 'h')",
            "INSERT INTO mark (id, visit_id, photograph_id, tool, selector, arch, remark, hand, written_at)"
                    + " VALUES (1, 1, 1, 'POINT', '<svg/>', 'EDGE', '', 'h', '2026-11-03T10:00:00Z')",
            "INSERT INTO card_print (id, card, level_mm, upright_mm, written_at) VALUES (1, 'BODY', 100, 100, '2026-11-03T10:00:00Z')",
            "INSERT INTO step (id, visit_id, position, name, hands_low_min, hands_typical_min, hands_high_min, wait_low_h,"
                    + " wait_typical_h, wait_high_h, needs, blocks_instrument) VALUES (1, 1, 1, 's', 1, 2, 3, 0, 0, 0, '', 0)",
            "INSERT INTO bench_plan (id, because, hand, written_at) VALUES (1, 'b', 'h', '2026-11-03T10:00:00Z')",
            "INSERT INTO bench_plan_piece VALUES (1, 1, 0, '2026-11-03T10:00:00Z', '2026-11-03T10:05:00Z',"
                    + " '2026-11-03T10:05:00Z', 'h')",
            "INSERT INTO bench_plan_visit VALUES (1, 1, '2026-11-03T10:05:00Z', NULL, NULL)",
            "INSERT INTO absence (id, away, from_day, to_day, reason, hand, written_at)"
                    + " VALUES (1, 'h', '2026-11-03', '2026-11-04', '', 'h', '2026-11-03T10:00:00Z')",
            "INSERT INTO visit_urgency (id, visit_id, urgency, hand, written_at)"
                    + " VALUES (1, 1, 'URGENT', 'h', '2026-11-03T10:00:00Z')",
            "INSERT INTO practice_time (id, template, step, hands_low_min, hands_typical_min, hands_high_min, wait_low_h,"
                    + " wait_typical_h, wait_high_h, hand, written_at)"
                    + " VALUES (1, 't', 's', 1, 2, 3, 0, 0, 0, 'h', '2026-11-03T10:00:00Z')",
            "INSERT INTO handover (id, visit_id, handed_over_on, received_by, left_as_it_was, care, returned_parts, written_at, hand)"
                    + " VALUES (1, 1, '2026-11-03', 'n', '', '', '', '2026-11-03T10:00:00Z', 'h')");

    @TempDir
    Path folder;

    private Ledger ledger;

    @BeforeEach
    void aShopWithOneRowOfEach() {
        ledger = Ledger.open(ShopFolder.open(folder));
        ledger.change(handle -> ROWS.forEach(handle::execute));
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
                "bench_plan",
                "bench_plan_piece",
                "bench_plan_visit",
                "absence",
                "visit_urgency",
                "practice_time",
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
