package afterlength.workshop.plan;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;

/** What-ifs, answered one by one behind the page. */
final class WishPages implements Room {
    private static final int REMEMBERED = 10;

    private final Frames frames;
    private final BenchPlans plans;
    private final AtomicLong count = new AtomicLong();
    private final Map<String, WishSearch> byId = new LinkedHashMap<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "what-if search");
        thread.setDaemon(true);
        return thread;
    });

    WishPages(Frames frames, BenchPlans plans) {
        this.frames = frames;
        this.plans = plans;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/plan/what-if", this::begin);
        routes.get("/plan/what-if/{search}", this::show);
        routes.post("/plan/what-if/{search}/stop", context -> {
            find(context.pathParam("search")).ifPresent(WishSearch::stop);
            show(context);
        });
    }

    private void begin(Context context) {
        String without = context.queryParam("without");
        long step = without != null && without.matches("\\d{1,18}") ? Long.parseLong(without) : 0;
        ShopWork work = plans.work();
        WishSearch search = new WishSearch(work, Wishes.of(work, step), plans.effortForWish());
        String id = Long.toString(count.incrementAndGet());
        remember(id, search);
        search.searchedBy(worker.submit(search::run));
        context.redirect("/plan/what-if/" + id);
    }

    private void show(Context context) {
        String id = context.pathParam("search");
        Optional<WishSearch> search = find(id);
        if (search.isEmpty()) {
            context.redirect("/plan/what-if");
        } else if (context.header("HX-Request") != null) {
            Templates.show(context, new WishPart(id, search.get()));
        } else {
            Frame frame = frames.at(Frame.Place.TODAY, "What if …").back("/plan", "The week");
            Templates.show(context, new WishPage(frame, new WishPart(id, search.get())));
        }
    }

    private synchronized void remember(String id, WishSearch search) {
        byId.put(id, search);
        if (byId.size() > REMEMBERED) {
            byId.remove(byId.keySet().iterator().next());
        }
    }

    private synchronized Optional<WishSearch> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }
}
