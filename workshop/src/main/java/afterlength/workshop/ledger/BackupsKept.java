package afterlength.workshop.ledger;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.YearMonth;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Which backups stay: every one asked for and every one from before a migration; of the daily ones those of fourteen days and the
 * oldest sound one of each month of a year.
 */
final class BackupsKept {
    private static final Duration EVERY_DAY = Duration.ofDays(14);
    private static final Duration EVERY_MONTH = Duration.ofDays(366);

    private BackupsKept() {}

    static void prune(List<Backup> newestFirst, Instant now) throws IOException {
        Set<YearMonth> months = new HashSet<>();
        for (int n = newestFirst.size() - 1; n > 0; n--) {
            Backup backup = newestFirst.get(n);
            if (backup.sheet().kind() == BackupKind.DAILY && !stays(backup, now, months)) {
                DiskWrites.removeFolder(backup.folder());
            }
        }
    }

    private static boolean stays(Backup backup, Instant now, Set<YearMonth> months) throws IOException {
        Instant madeAt = backup.sheet().madeAt();
        boolean firstOfMonth = madeAt.isAfter(now.minus(EVERY_MONTH))
                && backup.sound()
                && months.add(YearMonth.from(madeAt.atZone(ZoneOffset.UTC)));
        return firstOfMonth || madeAt.isAfter(now.minus(EVERY_DAY));
    }
}
