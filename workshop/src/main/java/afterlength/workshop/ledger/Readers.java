package afterlength.workshop.ledger;

import java.util.Deque;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * Connections for reading, kept open between questions: to open one makes the database read its whole description of tables, which
 * took up to half the time of a page. Between questions none holds a lock or an old state of the data, for every statement is ended; one that
 * failed is not used again.
 */
final class Readers implements AutoCloseable {
    /** A page asks from one thread, and few pages are asked for at once. */
    private static final int MOST_IDLE = 4;

    private final Jdbi jdbi;
    private final Deque<Handle> idle = new ConcurrentLinkedDeque<>();

    Readers(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    <T> T ask(Function<Handle, T> question) {
        Handle known = idle.pollFirst();
        Handle handle = known == null ? jdbi.open() : known;
        boolean sound = false;
        try {
            T answer = question.apply(handle);
            sound = !handle.isInTransaction();
            return answer;
        } finally {
            giveBack(handle, sound);
        }
    }

    /** Closes those that are idle. */
    @Override
    public void close() {
        for (Handle handle = idle.pollFirst(); handle != null; handle = idle.pollFirst()) {
            handle.close();
        }
    }

    private void giveBack(Handle handle, boolean sound) {
        if (sound && idle.size() < MOST_IDLE) {
            idle.addFirst(handle);
        } else {
            handle.close();
        }
    }
}
