package afterlength.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A demonstration shop grown to many instruments: every row that belongs to an owner, an instrument or a visit is copied under new
 * numbers, whatever tables there are; then findings and photographs are filled up. The copies are handed over; only the
 * demonstration's own instruments are still in the house. Photographs are small files of their own.
 */
final class BigShop implements AutoCloseable {
    private static final int FINDINGS_PER_VISIT = 12;
    private static final int PHOTOGRAPHS_PER_VISIT = 8;

    /** Numbers of copies lie this far apart; no table of the demonstration has so many rows. */
    private static final int APART = 10_000;

    /** Bills are numbered without a gap, and only the last plan counts: copies of either would be refused, or mean something else. */
    private static final String NEVER_COPIED = "(invoice|bench_plan).*";

    private final Path folder;
    private final Connection connection;
    private final Map<String, Map<String, String>> pointers = new HashMap<>();

    private BigShop(Path folder) throws SQLException {
        this.folder = folder;
        this.connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("shop.db"));
    }

    static void grow(Path folder, int instruments) throws SQLException, IOException {
        try (BigShop shop = new BigShop(folder)) {
            shop.connection.setAutoCommit(false);
            shop.copyAll(instruments);
            shop.fillUp("finding", FINDINGS_PER_VISIT);
            shop.fillUp("photograph", PHOTOGRAPHS_PER_VISIT);
            shop.handOver();
            shop.connection.commit();
            shop.picturesOfTheirOwn();
            shop.connection.commit();
        }
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }

    private void copyAll(int instruments) throws SQLException {
        int copies = Math.max(0, instruments / one("SELECT count(*) FROM instrument") - 1);
        run("CREATE TEMP TABLE copy AS WITH RECURSIVE n (k) AS (SELECT 1 UNION ALL SELECT k + 1 FROM n WHERE k < "
                + copies + ") SELECT k FROM n");
        for (String table : belonging()) {
            copy(table);
        }
    }

    /** Owner, instrument, visit and every table that points at one of them, or at one that does. */
    private Set<String> belonging() throws SQLException {
        List<String> tables = words("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
                + " AND sql NOT LIKE 'CREATE VIRTUAL%'");
        for (String table : tables) {
            pointers.put(table, pointersOf(table));
        }
        Set<String> belonging = new LinkedHashSet<>(List.of("owner"));
        boolean grew = true;
        while (grew) {
            grew = false;
            for (String table : tables) {
                if (!table.matches(NEVER_COPIED)
                        && pointersIn(table).values().stream().anyMatch(belonging::contains)) {
                    grew |= belonging.add(table);
                }
            }
        }
        pointers.values().forEach(each -> each.values().retainAll(belonging));
        return belonging;
    }

    private Map<String, String> pointersIn(String table) {
        return pointers.getOrDefault(table, Map.of());
    }

    private Map<String, String> pointersOf(String table) throws SQLException {
        Map<String, String> found = new HashMap<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery("PRAGMA foreign_key_list(" + table + ")")) {
            while (row.next()) {
                found.put(row.getString("from"), row.getString("table"));
            }
        }
        return found;
    }

    private void copy(String table) throws SQLException {
        List<String> columns = new ArrayList<>();
        List<String> values = new ArrayList<>();
        boolean numbered = false;
        for (String column : words("SELECT name FROM pragma_table_info('" + table + "')")) {
            columns.add(column);
            boolean id = column.equals("id");
            numbered |= id;
            values.add(value(table, column, id || pointersIn(table).containsKey(column)));
        }
        String first = numbered ? "id" : pointersIn(table).keySet().iterator().next();
        run("INSERT INTO " + table + " (" + String.join(", ", columns) + ") SELECT " + String.join(", ", values)
                + " FROM " + table + " r, copy WHERE r." + first + " < " + APART);
    }

    private static String value(String table, String column, boolean moves) {
        if (moves) {
            return "r." + column + " + k * " + APART;
        }
        boolean ofItsOwn = table.equals("visit") && column.equals("number");
        boolean told = table.equals("owner") && column.equals("name");
        return ofItsOwn || told ? "r." + column + " || ' ' || k" : "r." + column;
    }

    /** Repeats rows that hold now and answer no earlier one until each visit has so many. */
    private void fillUp(String table, int perVisit) throws SQLException {
        List<String> columns = words("SELECT name FROM pragma_table_info('" + table + "') WHERE name <> 'id'");
        String values = String.join(
                ", ",
                columns.stream()
                        .map(column -> column.equals("replaces") ? "NULL" : "r." + column)
                        .toList());
        run("CREATE TEMP TABLE many AS WITH RECURSIVE n (k) AS (SELECT 1 UNION ALL SELECT k + 1 FROM n WHERE k < "
                + perVisit + ") SELECT k FROM n");
        run("INSERT INTO " + table + " (" + String.join(", ", columns) + ") SELECT " + values + " FROM " + table
                + " r, many WHERE r.id IN (SELECT max(id) FROM " + table + " GROUP BY visit_id)"
                + " AND k <= " + perVisit + " - (SELECT count(*) FROM " + table + " o WHERE o.visit_id = r.visit_id)");
        run("DROP TABLE many");
    }

    private void handOver() throws SQLException {
        List<String> columns = words("SELECT name FROM pragma_table_info('handover') WHERE name <> 'id'");
        String values = String.join(
                ", ",
                columns.stream()
                        .map(column -> column.equals("visit_id") ? "v.id" : "h." + column)
                        .toList());
        run("INSERT INTO handover (" + String.join(", ", columns) + ") SELECT " + values
                + " FROM visit v, (SELECT * FROM handover WHERE replaces IS NULL ORDER BY id LIMIT 1) h WHERE v.id > "
                + APART + " AND v.id NOT IN (SELECT visit_id FROM handover)");
    }

    /** Every photograph of the copies is a file that no other one is. */
    private void picturesOfTheirOwn() throws SQLException, IOException {
        byte[] picture = smallPicture();
        List<String> ids = words("SELECT id FROM photograph WHERE id > " + APART);
        try (PreparedStatement change = connection.prepareStatement("UPDATE photograph SET sha256 = ? WHERE id = ?")) {
            for (String id : ids) {
                byte[] own = withComment(picture, id);
                String name = HexFormat.of().formatHex(sha256(own));
                Files.write(folder.resolve("photographs").resolve(name), own);
                change.setString(1, name);
                change.setString(2, id);
                change.addBatch();
            }
            change.executeBatch();
        }
    }

    private static byte[] smallPicture() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        javax.imageio.ImageIO.write(
                new java.awt.image.BufferedImage(64, 48, java.awt.image.BufferedImage.TYPE_INT_RGB), "jpg", out);
        return out.toByteArray();
    }

    /** A comment right behind the first two bytes of a JPEG makes the file a different one. */
    private static byte[] withComment(byte[] jpeg, String words) throws IOException {
        byte[] comment = words.getBytes(StandardCharsets.US_ASCII);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.write(new byte[] {(byte) 0xff, (byte) 0xfe, 0, (byte) (comment.length + 2)});
        out.write(comment);
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private void run(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private int one(String sql) throws SQLException {
        return Integer.parseInt(words(sql).get(0));
    }

    private List<String> words(String sql) throws SQLException {
        List<String> words = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            while (row.next()) {
                words.add(row.getString(1));
            }
        }
        return words;
    }
}
