package afterlength.workshop.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;

/**
 * Shops as earlier versions of this program left them. What a version left is kept as text in {@code shops/version-N.sql}, written
 * once with {@link #main} and not touched again; a version whose file is not kept yet is made the same way for the test.
 */
final class OldShops {
    private static final Path KEPT = Path.of("src/test/resources/afterlength/workshop/ledger/shops");

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
            "INSERT INTO camera_calibration (id, camera, lens, focal_mm, focal35_mm, width_px, height_px, log_focal,"
                    + " log_focal_deviation, k1, k1_deviation, centre_x_px, centre_x_deviation_px, centre_y_px,"
                    + " centre_y_deviation_px, nearest_mm, usual_mm, farthest_mm, residual_px, hand, written_at)"
                    + " VALUES (1, 'c', '', 5.5, 26, 4032, 3024, 8, 0.001, 0.01, 0.001, 2016, 1, 1512, 1, 400, 500, 600, 0.1, 'h',"
                    + " '2026-11-03T10:00:00Z')",
            "INSERT INTO camera_calibration_picture VALUES (1, 0, 'x', 86, 0.1, 30, 560)",
            "INSERT INTO camera_calibration_standing VALUES (1, 1, 1, '2026-11-03T10:00:00Z')",
            "INSERT INTO closing_tick VALUES (1, 1, 'cleats', 't', 1, '', 'h', '2026-11-03T10:00:00Z')",
            "INSERT INTO advice_decision VALUES (1, 1, 1, NULL, 'LEAVE', 't', 'r', 'h', '2026-11-03T10:00:00Z')",
            "INSERT INTO invoice (id, visit_id, year, serial, issued_on, supplied_on, seller, seller_tax_id, buyer, subject, currency,"
                    + " rounding, net_minor, tax_minor, total_minor, paid_minor, terms, no_tax_reason, remark, written_at, hand)"
                    + " VALUES (1, 1, 2026, 1, '2026-11-03', '2026-11-03', '', '', '', '', 'EUR', 'PER_LINE', 1, 0, 1, 0, '', '', '',"
                    + " '2026-11-03T10:00:00Z', 'h')",
            "INSERT INTO invoice_line VALUES (1, 1, NULL, 't', NULL, 1, 0)",
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

    private OldShops() {}

    static List<String> rows() {
        return ROWS;
    }

    /** Puts a shop of an earlier version into an empty folder. */
    static void put(int version, Path database) throws IOException, SQLException {
        Path kept = KEPT.resolve("version-" + version + ".sql");
        DataSource source = SqliteSource.of(database);
        if (!Files.exists(kept)) {
            make(version, source);
            return;
        }
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA foreign_keys = OFF");
            for (String each : List.of(Files.readString(kept).split(";\n(?=[A-Z-])", -1))) {
                statement.execute(each);
            }
        }
    }

    /** The migrations up to a version, and a row in every table it has. */
    private static void make(int version, DataSource source) throws SQLException {
        Flyway.configure()
                .dataSource(source)
                .locations("classpath:afterlength/workshop/ledger/migrations")
                .table("schema_history")
                .target(Integer.toString(version))
                .load()
                .migrate();
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            for (String row : ROWS) {
                if (hasTable(statement, row.split(" ", 5)[2])) {
                    statement.execute(row);
                }
            }
            statement.execute("PRAGMA user_version = " + version);
        }
    }

    private static boolean hasTable(Statement statement, String table) throws SQLException {
        try (ResultSet row = statement.executeQuery("SELECT 1 FROM sqlite_master WHERE name = '" + table + "'")) {
            return row.next();
        }
    }

    /** Writes the files of the versions named, in the module's folder. */
    public static void main(String[] versions) throws IOException, SQLException {
        Files.createDirectories(KEPT);
        for (String version : versions) {
            Path database = Files.createTempDirectory("old-shop").resolve("shop.db");
            DataSource source = SqliteSource.of(database);
            make(Integer.parseInt(version), source);
            Files.writeString(
                    KEPT.resolve("version-" + version + ".sql"), text(source, version), StandardCharsets.UTF_8);
        }
    }

    private static String text(DataSource source, String version) throws SQLException {
        List<String> statements = new ArrayList<>();
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement()) {
            texts(
                    statement,
                    "SELECT sql FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'",
                    statements);
            List<String> tables = new ArrayList<>();
            texts(
                    statement,
                    "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'",
                    tables);
            for (String table : tables) {
                List<String> columns = new ArrayList<>();
                texts(statement, "SELECT 'quote(\"' || name || '\")' FROM pragma_table_info('" + table + "')", columns);
                texts(
                        statement,
                        "SELECT 'INSERT INTO \"" + table + "\" VALUES (' || " + String.join(" || ', ' || ", columns)
                                + " || ')' FROM \"" + table + "\"",
                        statements);
            }
            texts(statement, "SELECT sql FROM sqlite_master WHERE type <> 'table' AND sql IS NOT NULL", statements);
        }
        statements.add("PRAGMA user_version = " + version);
        return String.join(";\n", statements) + ";\n";
    }

    private static void texts(Statement statement, String question, List<String> texts) throws SQLException {
        try (ResultSet row = statement.executeQuery(question)) {
            while (row.next()) {
                texts.add(row.getString(1));
            }
        }
    }
}
