package afterlength.workshop.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * One backup: a folder with {@code shop.db}, its {@link BackupSheet} and, once it was tried, {@code tried.txt}. The photographs
 * it needs lie two folders up, in {@code photographs/}: beside a shop's own backups that is the shop, in a backup place it is the
 * place's own copy. They are never altered, so one copy serves every backup.
 */
public record Backup(Path folder, BackupSheet sheet) {
    static final String DATABASE = "shop.db";
    private static final String TRIED = "tried.txt";
    private static final String SOUND = "restored for trial and found whole";

    /**
     * Opens a backup.
     *
     * @throws IOException when the folder holds none or it broke off
     */
    public static Backup open(Path folder) throws IOException {
        try {
            return new Backup(folder, BackupSheet.read(Files.readString(folder.resolve(BackupSheet.NAME))));
        } catch (IllegalArgumentException broken) {
            throw new IOException(broken.getMessage(), broken);
        }
    }

    public Path database() {
        return folder.resolve(DATABASE);
    }

    /** The folder in which {@code photographs/} and {@code loggers/} of this backup lie. */
    public Path files() {
        return folder.toAbsolutePath().normalize().resolve("../..").normalize();
    }

    /** What its trial found, line by line; empty when it was not tried. */
    public List<String> trial() throws IOException {
        Path tried = folder.resolve(TRIED);
        return Files.exists(tried) ? Files.readAllLines(tried, StandardCharsets.UTF_8) : List.of();
    }

    public boolean sound() throws IOException {
        List<String> trial = trial();
        return !trial.isEmpty() && trial.get(0).startsWith(SOUND);
    }

    void keepTrial(List<String> faults, String extent) throws IOException {
        String first = faults.isEmpty() ? SOUND + ", " + extent : "tried and found faulty, " + extent;
        DiskWrites.text(folder.resolve(TRIED), first + "\n" + String.join("\n", faults) + "\n");
    }
}
