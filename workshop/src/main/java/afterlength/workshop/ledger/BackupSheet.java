package afterlength.workshop.ledger;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What lies beside the database of a backup as {@code backup.txt}: when and why it was made, the fingerprint of the database, how
 * many rows each table had and which files belong to it. Plain lines, so that a person can read it without this program.
 *
 * @param databaseSha256 SHA-256 of {@code shop.db} in the backup's folder
 * @param rows number of rows by table, counted in the very state that was copied
 * @param files sizes in bytes by place from the shop's folder, such as {@code photographs/4f…}; the name is the SHA-256
 */
public record BackupSheet(
        Instant madeAt,
        BackupKind kind,
        int version,
        String databaseSha256,
        Map<String, Long> rows,
        Map<String, Long> files) {
    static final String NAME = "backup.txt";
    private static final String HEAD = "A backup of a shop kept by Afterlength";

    String text() {
        List<String> lines = new ArrayList<>(
                List.of(HEAD, "made " + madeAt, "kind " + kind, "version " + version, "database " + databaseSha256));
        rows.forEach((table, count) -> lines.add("rows " + count + " " + table));
        files.forEach((place, bytes) -> lines.add("file " + bytes + " " + place));
        lines.add("end");
        return String.join("\n", lines) + "\n";
    }

    /**
     * Reads a sheet.
     *
     * @throws IllegalArgumentException when it is no sheet of ours or broke off
     */
    static BackupSheet read(String text) {
        List<String> lines = text.lines().toList();
        if (lines.isEmpty()
                || !lines.get(0).equals(HEAD)
                || !lines.get(lines.size() - 1).equals("end")) {
            throw new IllegalArgumentException("its list is not ours, or broke off");
        }
        try {
            return new BackupSheet(
                    Instant.parse(value(lines, "made ")),
                    BackupKind.valueOf(value(lines, "kind ")),
                    Integer.parseInt(value(lines, "version ")),
                    value(lines, "database "),
                    counted(lines, "rows "),
                    counted(lines, "file "));
        } catch (DateTimeParseException | IndexOutOfBoundsException e) {
            throw new IllegalArgumentException("its list cannot be read (" + e.getMessage() + ")", e);
        }
    }

    private static String value(List<String> lines, String key) {
        return lines.stream()
                .filter(line -> line.startsWith(key))
                .map(line -> line.substring(key.length()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("its list lacks \"" + key.strip() + "\""));
    }

    private static Map<String, Long> counted(List<String> lines, String key) {
        Map<String, Long> counts = new TreeMap<>();
        lines.stream().filter(line -> line.startsWith(key)).forEach(line -> {
            String[] words = line.split(" ", 3);
            counts.put(words[2], Long.valueOf(words[1]));
        });
        return counts;
    }
}
