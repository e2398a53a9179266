package afterlength.workshop.agreement;

import afterlength.craft.access.Carried;
import afterlength.craft.access.Cavity;
import afterlength.craft.access.CleatPassage;
import afterlength.craft.access.PlacedCleat;
import afterlength.craft.access.SectionQuestion;
import afterlength.craft.geometry.Point;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;

/**
 * Looks for ways in behind the pages, one at a time, so that no page waits longer than {@link #AT_ONCE_MS} for one. The last few are kept
 * in memory: they are derived from what was typed, and take seconds.
 */
public final class WaySearches {
    private static final int MOST_KEPT = 16;
    private static final long AT_ONCE_MS = 500;

    private final Executor worker;
    private final Map<Question, WaySearch> kept = new LinkedHashMap<>();
    private long count;

    public WaySearches() {
        this(Executors.newSingleThreadExecutor(WaySearches::behind));
    }

    WaySearches(Executor worker) {
        this.worker = worker;
    }

    /** A search keeps nobody from leaving the program. */
    private static Thread behind(Runnable work) {
        Thread thread = new Thread(work, "way search");
        thread.setDaemon(true);
        return thread;
    }

    private record Question(Cavity cavity, Carried carried, Point centre, double turn_deg) {}

    /** The search for a way to the first cleat, begun now when there was none; nothing when there is no cleat. */
    Optional<WaySearch> of(AccessLook look) {
        if (look.row().cleats().isEmpty()) {
            return Optional.empty();
        }
        PlacedCleat first = look.row().cleats().get(0);
        WaySearch search = begun(new Question(look.cavity(), look.carried(), first.centre(), first.turn_deg()), look);
        search.waitFor(AT_ONCE_MS);
        return Optional.of(search);
    }

    synchronized Optional<WaySearch> find(long number) {
        return kept.values().stream()
                .filter(search -> search.number() == number)
                .findFirst();
    }

    private synchronized WaySearch begun(Question question, AccessLook look) {
        WaySearch known = kept.get(question);
        if (known != null && (known.isWorking() || known.isAnswered())) {
            return known;
        }
        WaySearch fresh = new WaySearch(++count, look);
        kept.remove(question);
        kept.put(question, fresh);
        if (kept.size() > MOST_KEPT) {
            Question oldest = kept.keySet().iterator().next();
            Optional.ofNullable(kept.remove(oldest)).ifPresent(WaySearch::cancel);
        }
        worker.execute(() -> look(question, fresh));
        return fresh;
    }

    private static void look(Question question, WaySearch search) {
        try {
            search.end(CleatPassage.find(
                    question.cavity,
                    question.carried,
                    question.centre,
                    question.turn_deg,
                    SectionQuestion.USUAL_CLEARANCE_MM,
                    search));
        } catch (RuntimeException broken) {
            search.end(null);
        }
    }
}
