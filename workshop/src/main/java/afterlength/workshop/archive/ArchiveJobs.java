package afterlength.workshop.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;

/**
 * Makes one archive at a time beside the pages. The last one made can be fetched until the next is made or the program ends; no copy
 * stays in the shop's folder, so that nothing erased later lives on in it.
 */
final class ArchiveJobs {
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
