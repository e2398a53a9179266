package afterlength.workshop.desk;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.NotFoundResponse;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Pages for what cannot be answered: in plain words, with a way back. They ask the database for nothing. */
final class Refusals {
    private static final Frame FRAME =
            new Frame(new ShopSign("Afterlength", false), Frame.Place.TODAY, "This cannot be done", null, "");
    private static final Logger LOG = Logger.getLogger(Refusals.class.getName());

    private Refusals() {}

    static void answer(RoutesConfig routes) {
        routes.exception(NotHere.class, (missing, context) -> page(context, 404, missing.getMessage()));
        routes.exception(
                NotFoundResponse.class,
                (none, context) -> page(context, 404, "There is no page at " + context.path() + "."));
        routes.exception(
                HttpResponseException.class,
                (refused, context) -> page(context, refused.getStatus(), String.valueOf(refused.getMessage())));
        routes.exception(Exception.class, (fault, context) -> ownFault(context, fault));
    }

    private static void ownFault(Context context, Exception fault) {
        LOG.log(Level.SEVERE, "own fault at " + context.method() + " " + context.path(), fault);
        page(
                context,
                500,
                "This is our own fault, not yours: the page could not be made. What was saved before is kept. "
                        + "The program's output names the cause.");
    }

    /** The page as text, for an answer that goes out before the rest of a request was read. */
    static String text(String reason) {
        return Templates.text(new RefusalPage(FRAME, reason));
    }

    private static void page(Context context, int status, String reason) {
        context.status(status);
        Templates.show(context, new RefusalPage(FRAME, reason));
    }
}
