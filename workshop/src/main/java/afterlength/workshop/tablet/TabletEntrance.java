package afterlength.workshop.tablet;

import afterlength.workshop.desk.Entrance;
import io.javalin.http.Context;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The entrance for tablets: only those that were paired; the pages about tablets themselves stay at the shop's own machine. */
final class TabletEntrance implements Entrance {
    static final String COOKIE = "tablet";

    private final TabletStore tablets;
    private final List<String> names;
    private final Clock clock;

    TabletEntrance(TabletStore tablets, List<String> names, Clock clock) {
        this.tablets = tablets;
        this.names = List.copyOf(names);
        this.clock = clock;
    }

    @Override
    public boolean answersTo(String host) {
        return names.contains(host) || host.equals("127.0.0.1");
    }

    @Override
    public String scheme() {
        return "https";
    }

    @Override
    public boolean admits(Context context) {
        String path = context.path();
        if (path.equals("/pair") || path.startsWith("/files/") || path.startsWith("/fonts/")) {
            return true;
        }
        if (!isPaired(context.cookie(COOKIE))) {
            context.redirect("/pair");
            return false;
        }
        if (path.startsWith("/shelf/tablets")) {
            context.status(403).result("This is done at the shop's own machine.");
            return false;
        }
        return true;
    }

    private boolean isPaired(@Nullable String secret) {
        return secret != null
                && !secret.isEmpty()
                && tablets.findWelcome(secret, clock.instant()).isPresent();
    }
}
