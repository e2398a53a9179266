package afterlength.workshop.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A shop of every earlier version opens with this one: each row is still there, and the form is that of a new shop. */
class OldShopStoreTest {
    @TempDir
    Path folder;

    /** V5 was never published. */
    static Stream<Integer> versions() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/afterlength/workshop/ledger/migrations"))) {
            return files
                    .map(file -> file.getFileName().toString())
                    .map(name -> Integer.valueOf(name.substring(1, name.indexOf("__"))))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("versions")
    void everyRowOfAnEarlierVersionIsThereAndTheFormIsThatOfANewShop(int version) throws IOException, SQLException {
        ShopFolder shop = ShopFolder.open(folder.resolve("old"));
        OldShops.put(version, shop.database());
        Map<String, List<String>> before = rows(shop);
        Ledger.open(shop);
        Map<String, List<String>> after = rows(shop);
        before.forEach((table, rows) -> assertThat(after.get(table)).as(table).containsAll(rows));
        assertThat(before).containsKey("finding");
        ShopFolder fresh = ShopFolder.open(folder.resolve("fresh"));
        Ledger.open(fresh);
        assertThat(form(shop)).isEqualTo(form(fresh));
    }

    @ParameterizedTest
    @MethodSource("versions")
    void aBackupThatWasTriedIsKeptBeforeTheStep(int version) throws IOException, SQLException {
        ShopFolder shop = ShopFolder.open(folder.resolve("old"));
        OldShops.put(version, shop.database());
        Ledger.open(shop);
        List<Backup> backups = new Backups(shop).list();
        assertThat(backups).hasSize(version < Migrations.NEWEST ? 1 : 0);
        for (Backup backup : backups) {
            assertThat(backup.sheet().version()).isEqualTo(version);
            assertThat(BackupTrial.run(backup, BackupTrial.Extent.ALL).ofDatabase())
                    .isEmpty();
        }
    }

    /** The step fails on the copy: two rows that a newer version's rule would not let stand. */
    @Test
    void aStepThatFailsOnTheCopyDoesNotTouchTheShop() throws IOException, SQLException {
        ShopFolder shop = ShopFolder.open(folder.resolve("old"));
        OldShops.put(1, shop.database());
        try (Connection connection = SqliteSource.of(shop.database()).getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("CREATE TABLE setup_reading (in_the_way TEXT)");
        }
        assertThatThrownBy(() -> Ledger.open(shop))
                .isInstanceOf(ShopUnusable.class)
                .hasMessageContaining("nothing was changed");
        try (Connection connection = SqliteSource.of(shop.database()).getConnection()) {
            assertThat(new DatabaseFacts(connection).version()).isEqualTo(1);
            assertThat(new DatabaseFacts(connection).rows())
                    .containsEntry("finding", 1L)
                    .doesNotContainKey("air_file");
        }
    }

    /** Each row as the text of the columns the old version had; the history of steps grows and is left out. */
    private Map<String, List<String>> rows(ShopFolder shop) throws SQLException {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        try (Connection connection = SqliteSource.of(shop.database()).getConnection();
                Statement statement = connection.createStatement()) {
            for (String table : new DatabaseFacts(connection).rows().keySet()) {
                rows.put(table, new ArrayList<>());
                String columns = String.join(", ", columns(table));
                if (!columns.isEmpty() && !table.equals("schema_history")) {
                    add(statement, "SELECT " + columns + " FROM " + table, rows.get(table));
                }
            }
        }
        return rows;
    }

    private final Map<String, List<String>> columnsOfOld = new LinkedHashMap<>();

    private List<String> columns(String table) throws SQLException {
        if (columnsOfOld.isEmpty()) {
            try (Connection connection =
                            SqliteSource.of(folder.resolve("old/shop.db")).getConnection();
                    Statement statement = connection.createStatement()) {
                for (String each : new DatabaseFacts(connection).rows().keySet()) {
                    List<String> columns = new ArrayList<>();
                    add(statement, "SELECT name FROM pragma_table_info('" + each + "')", columns);
                    columnsOfOld.put(
                            each,
                            columns.stream().map(row -> row.replace("|", "")).toList());
                }
            }
        }
        return columnsOfOld.getOrDefault(table, List.of());
    }

    private static void add(Statement statement, String question, List<String> rows) throws SQLException {
        try (ResultSet row = statement.executeQuery(question)) {
            while (row.next()) {
                StringBuilder text = new StringBuilder();
                for (int column = 1; column <= row.getMetaData().getColumnCount(); column++) {
                    text.append(row.getString(column)).append('|');
                }
                rows.add(text.toString());
            }
        }
    }

    /** Tables, views, triggers and indexes, whatever their spacing and order. */
    private static Set<String> form(ShopFolder shop) throws SQLException {
        List<String> parts = new ArrayList<>();
        try (Connection connection = SqliteSource.of(shop.database()).getConnection();
                Statement statement = connection.createStatement()) {
            add(statement, "SELECT type || ' ' || name || ' ' || coalesce(sql, '') FROM sqlite_master", parts);
        }
        Set<String> form = new TreeSet<>();
        parts.forEach(part -> form.add(part.replaceAll("\\s+", " ")));
        return form;
    }
}
