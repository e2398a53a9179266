package afterlength.planner.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Searches that go on side by side, in rounds that end together. */
final class Teams implements AutoCloseable {
    private final ExecutorService threads;

    Teams(int count) {
        threads = Executors.newFixedThreadPool(count, work -> {
            Thread thread = new Thread(work, "bench plan");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** What each found, in the order given. */
    <T> List<T> round(List<Callable<T>> searches) {
        try {
            List<T> found = new ArrayList<>();
            for (Future<T> search : threads.invokeAll(searches)) {
                found.add(search.get());
            }
            return found;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the planning was stopped from outside", stopped);
        } catch (ExecutionException fault) {
            throw new IllegalStateException("a search broke", fault);
        }
    }

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
