package afterlength.workshop.backup;

import afterlength.workshop.desk.Days;
import afterlength.workshop.ledger.Backup;
import java.io.IOException;
import java.util.List;

/** One backup in the list: when, why, and what its trial found. */
record BackupLine(String when, String why, String place, boolean sound, List<String> trial) {
    static BackupLine of(Backup backup) throws IOException {
        return new BackupLine(
                Days.words(backup.sheet().madeAt()),
                backup.sheet().kind().words(),
                backup.folder().getFileName().toString(),
                backup.sound(),
                backup.trial());
    }

    String words() {
        return trial.isEmpty() ? "not tried" : trial.get(0);
    }

    List<String> faults() {
        return trial.stream().skip(1).filter(line -> !line.isBlank()).limit(5).toList();
    }
}
