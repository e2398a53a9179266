package afterlength.workshop.archive;

import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import org.jspecify.annotations.Nullable;

/** An archive being made or read, seen from a page: how far it has come, and how it ended. */
final class ArchiveJob implements Progress {
    private volatile String step = "Beginning";
    private volatile long done;
    private volatile long all = 1;
    private volatile boolean stopping;
    private volatile @Nullable Path file;
    private volatile @Nullable Path shop;
    private volatile String failure = "";

    @Override
    public void told(String what, long doneNow, long allOfIt) {
        if (stopping) {
            throw new CancellationException("stopped");
        }
        step = what;
        all = allOfIt;
        done = doneNow;
    }

    void stop() {
        stopping = true;
    }

    void end(Path made) {
        file = made;
    }

    void endReading(Path built) {
        shop = built;
    }

    void fail(String why) {
        failure = why;
    }

    boolean running() {
        return file == null && shop == null && failure.isEmpty();
    }

    @Nullable
    Path file() {
        return file;
    }

    /** The folder of the shop that was made of an archive. */
    @Nullable
    Path shop() {
        return shop;
    }

    /** Why it came to nothing; empty while it runs and when it went well. */
    String failure() {
        return failure;
    }

    /** “Tables written: 12 of 40”. */
    String words() {
        return step + ": " + done + " of " + all;
    }

    long done() {
        return done;
    }

    long all() {
        return all;
    }
}
