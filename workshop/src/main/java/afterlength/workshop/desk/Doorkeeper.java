package afterlength.workshop.desk;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import java.net.URI;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Lets in only requests that were meant for this program: the Host must be a name of the entrance (a foreign page that re-points its
 * own name at us is turned away), a change must come from one of our own pages, and the entrance must admit the visitor.
 */
final class Doorkeeper {
    private static final Set<String> LOOKING_ONLY = Set.of("GET", "HEAD");
    private static final Set<String> OURS = Set.of("same-origin", "none");
    private static final String ONLY_OUR_OWN =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; "
                    + "font-src 'self'; connect-src 'self'; manifest-src 'self'; worker-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final Entrance entrance;

    private Doorkeeper(Entrance entrance) {
        this.entrance = entrance;
    }

    static void stand(RoutesConfig routes, Entrance entrance) {
        Doorkeeper keeper = new Doorkeeper(entrance);
        routes.before(Doorkeeper::tellBrowserTheRules);
        routes.before(keeper::check);
        routes.before(BodyLimit::check);
    }

    private void check(Context context) {
        if (!entrance.answersTo(nameOf(context.host()))) {
            throw new ForbiddenResponse("This program answers only to 127.0.0.1 and localhost.");
        }
        if (!LOOKING_ONLY.contains(context.method().name()) && !fromOurPages(context)) {
            throw new ForbiddenResponse("A change is taken only from this program's own pages.");
        }
        if (!entrance.admits(context)) {
            context.skipRemainingHandlers();
        }
    }

    /** Browsers send Origin with every post; a program without one (curl, a test) cannot be tricked by a foreign page. */
    private boolean fromOurPages(Context context) {
        String origin = context.header("Origin");
        String site = context.header("Sec-Fetch-Site");
        return (origin == null || origin.equals(entrance.scheme() + "://" + context.host()))
                && (site == null || OURS.contains(site));
    }

    private static String nameOf(@Nullable String host) {
        if (host == null) {
            return "";
        }
        try {
            String name = URI.create("http://" + host).getHost();
            return name == null ? "" : name;
        } catch (IllegalArgumentException e) {
            return "";
        }
    }

    private static void tellBrowserTheRules(Context context) {
        context.header("Content-Security-Policy", ONLY_OUR_OWN);
        context.header("X-Content-Type-Options", "nosniff");
        context.header("X-Frame-Options", "DENY");
        context.header("Referrer-Policy", "same-origin");
        context.header("Cross-Origin-Opener-Policy", "same-origin");
        context.header("Cross-Origin-Resource-Policy", "same-origin");
    }
}
