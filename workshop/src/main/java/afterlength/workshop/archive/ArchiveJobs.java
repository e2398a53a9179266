package afterlength.workshop.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;

/**
 * Makes or reads one archive at a time beside the pages. The last one made can be fetched until the next is made or the program ends; no copy
 * stays in the shop's folder, so that nothing erased later lives on in it.
 */
final class ArchiveJobs {
    /** What is done within this time is answered at once, without a page that waits. */
    private static final long SHORT_MS = 1500;

    private final ArchiveMaker maker;
    private @Nullable ArchiveJob job;
    private @Nullable Path folder;

    ArchiveJobs(ArchiveMaker maker) {
        this.maker = maker;
    }

    synchronized Optional<ArchiveJob> find() {
        return Optional.ofNullable(job);
    }

    /** Begins; nothing happens while another one is being made. */
    synchronized void begin(ArchiveWish wish) {
        if (job != null && job.running()) {
            return;
        }
        forget();
        ArchiveJob begun = new ArchiveJob();
        job = begun;
        Path place = place().resolve(maker.fileName(wish));
        place.toFile().deleteOnExit();
        Thread worker = new Thread(() -> make(begun, wish, place), "archive");
        worker.setDaemon(true);
        worker.start();
    }

    private void make(ArchiveJob begun, ArchiveWish wish, Path place) {
        try {
            maker.write(wish, place, begun);
            begun.end(place);
        } catch (CancellationException stopped) {
            begun.fail("Stopped. No archive was made.");
        } catch (IOException | RuntimeException failed) {
            begun.fail("The archive could not be made: " + failed.getMessage()
                    + ". See whether the disk has room, then try again; nothing was changed.");
        }
    }

    /**
     * Begins to read an archive that was brought, which is removed afterwards; answers whether it could begin. A short one has been read when this
     * returns.
     */
    boolean beginReading(Path brought, Path place) {
        ArchiveJob begun = new ArchiveJob();
        synchronized (this) {
            if (job != null && job.running()) {
                return false;
            }
            forget();
            job = begun;
        }
        Thread worker = new Thread(() -> read(begun, brought, place), "archive");
        worker.setDaemon(true);
        worker.start();
        waitAWhile(worker);
        return true;
    }

    private static void waitAWhile(Thread worker) {
        try {
            worker.join(SHORT_MS);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private static void read(ArchiveJob begun, Path brought, Path place) {
        try {
            ArchiveReader.read(brought, place, begun);
            begun.endReading(place);
        } catch (CancellationException stopped) {
            begun.fail("Stopped. Nothing was kept of the archive.");
        } catch (ArchiveRefused refused) {
            begun.fail(refused.getMessage() + " Nothing was kept of it.");
        } catch (IOException | RuntimeException failed) {
            begun.fail("The archive could not be read: " + failed.getMessage() + ". Nothing was kept of it.");
        } finally {
            brought.toFile().delete();
        }
    }

    /** Takes the archive that was made out of the way. */
    synchronized void forget() {
        Path made = job == null ? null : job.file();
        if (made != null) {
            made.toFile().delete();
        }
        job = null;
    }

    private Path place() {
        try {
            Path kept = folder;
            if (kept == null || !Files.isDirectory(kept)) {
                kept = Files.createTempDirectory("afterlength-archive-");
                kept.toFile().deleteOnExit();
                folder = kept;
            }
            return kept;
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
