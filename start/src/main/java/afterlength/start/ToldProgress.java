package afterlength.start;

import afterlength.workshop.archive.Progress;
import java.util.concurrent.TimeUnit;

/** Says on standard error how far a long work has come: the end of each part, and otherwise once a second. */
final class ToldProgress implements Progress {
    private static final long PAUSE_NS = TimeUnit.SECONDS.toNanos(1);

    private final Console console;
    private long last_ns = System.nanoTime();

    ToldProgress(Console console) {
        this.console = console;
    }

    @Override
    public void told(String what, long done, long all) {
        long now_ns = System.nanoTime();
        if (done == all || now_ns - last_ns > PAUSE_NS) {
            console.say("  " + what + ": " + done + " of " + all);
            last_ns = now_ns;
        }
    }
}
