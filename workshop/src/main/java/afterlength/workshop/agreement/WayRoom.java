package afterlength.workshop.agreement;

import afterlength.workshop.desk.Addresses;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.Templates;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;

/** The part of the access page that tells how far the search for a way in is, and stops it. */
public final class WayRoom implements Room {
    private final WaySearches searches;

    public WayRoom(WaySearches searches) {
        this.searches = searches;
    }

    @Override
    public void open(RoutesConfig routes) {
        routes.get("/access/ways/{way}", context -> show(context, search(context)));
        routes.post("/access/ways/{way}/cancel", context -> {
            WaySearch search = search(context);
            search.cancel();
            search.waitFor(1000);
            show(context, search);
        });
    }

    private WaySearch search(Context context) {
        long number = Addresses.id(context, "way");
        return searches.find(number).orElseThrow(() -> new NotHere("search for a way", number));
    }

    private static void show(Context context, WaySearch search) {
        context.header("Cache-Control", "no-store");
        Templates.show(context, new WayPart(search));
    }
}
