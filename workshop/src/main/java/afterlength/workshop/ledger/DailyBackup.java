package afterlength.workshop.ledger;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * While the shop is open, keeps a backup of each day and tries it. Looked at every ten minutes, so that a machine that slept makes
 * up for it. A failure is said in the log and on the page of backups, and tried again.
 */
public final class DailyBackup implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(DailyBackup.class.getName());
    private static final Duration A_DAY = Duration.ofHours(24);
    private static final int LOOK_EVERY_MIN = 10;

    private final Backups backups;
    private final Clock clock;
    private final ScheduledExecutorService thread =
            Executors.newSingleThreadScheduledExecutor(DailyBackup::quietThread);

    private DailyBackup(ShopFolder shop, Clock clock) {
        backups = new Backups(shop);
        this.clock = clock;
    }

    public static DailyBackup begin(ShopFolder shop, Clock clock) {
        DailyBackup daily = new DailyBackup(shop, clock);
        var looking =
                daily.thread.scheduleWithFixedDelay(daily::lookQuietly, 5, LOOK_EVERY_MIN * 60L, TimeUnit.SECONDS);
        LOG.log(Level.DEBUG, looking);
        return daily;
    }

    private static Thread quietThread(Runnable work) {
        Thread thread = new Thread(work, "daily backup");
        thread.setDaemon(true);
        return thread;
    }

    private void lookQuietly() {
        try {
            look(backups, clock.instant());
        } catch (IOException | RuntimeException failed) {
            LOG.log(
                    Level.WARNING,
                    "the daily backup could not be made and will be tried again: " + failed.getMessage());
        }
    }

    /** Makes the backup of the day when the newest sound one is a day old; old daily ones then give way. */
    static void look(Backups backups, Instant now) throws IOException {
        if (isDue(backups.list(), now)) {
            Backup made = backups.make(BackupKind.DAILY, now);
            BackupTrial.Outcome outcome =
                    BackupTrial.run(made, BackupTrial.Extent.ofDay(now.getEpochSecond() / A_DAY.toSeconds()));
            if (outcome.ofDatabase().isEmpty()) {
                BackupsKept.prune(backups.list(), now);
            }
            outcome.faults().stream()
                    .limit(3)
                    .forEach(fault -> LOG.log(Level.WARNING, "the daily backup is not whole: " + fault));
        }
    }

    private static boolean isDue(List<Backup> newestFirst, Instant now) throws IOException {
        for (Backup backup : newestFirst) {
            boolean young = backup.sheet().madeAt().isAfter(now.minus(A_DAY));
            if (young && backup.sheet().kind() == BackupKind.DAILY) {
                return false;
            }
        }
        return true;
    }

    @Override
    public void close() {
        thread.shutdown();
    }
}
