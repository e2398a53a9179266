package afterlength.workshop.desk;

import afterlength.workshop.ledger.DiskRefuses;
import afterlength.workshop.ledger.ReplacedAlready;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.nio.file.FileSystemException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.http.HttpException;
import org.jspecify.annotations.Nullable;

/** Pages for what cannot be answered: in plain words, with a way back. They ask the database for nothing. */
final class Refusals {
    private static final Frame FRAME =
            new Frame(new ShopSign("Afterlength", false), Frame.Place.TODAY, "This cannot be done", null, "");
    private static final Logger LOG = Logger.getLogger(Refusals.class.getName());
    private static final int CONFLICT = 409;
    private static final int NO_ROOM = 507;
    /** What Java writes files through; it tells a disk that refuses from a connection that breaks. */
    private static final String FILE = "sun.nio.ch.FileChannelImpl";

    private Refusals() {}

    static void answer(RoutesConfig routes) {
        routes.exception(NotHere.class, (missing, context) -> page(context, 404, missing.getMessage()));
        routes.exception(
                NotFoundResponse.class,
                (none, context) -> page(context, 404, "There is no page at " + context.path() + "."));
        routes.exception(
                HttpResponseException.class,
                (refused, context) -> page(context, refused.getStatus(), String.valueOf(refused.getMessage())));
        routes.exception(ReplacedAlready.class, (late, context) -> changedMeanwhile(context));
        routes.exception(DiskRefuses.class, (full, context) -> diskRefuses(context, full));
        routes.exception(Exception.class, (fault, context) -> anyOther(context, fault));
    }

    /**
     * What cannot be read as a request is refused as such; the rest is our own fault. Where a request could not be read to its end the
     * connection ends too, and says so, lest the next request is sent along it and lost.
     */
    private static void anyOther(Context context, Exception fault) {
        HttpException unreadable = unreadable(fault);
        IOException unwritten = unreadable == null ? null : unwritten(fault);
        if (unwritten != null) {
            noRoomToReceive(context, unwritten);
        } else if (unreadable != null && unreadable.getCode() < 500) {
            context.header("Connection", "close");
            page(
                    context,
                    unreadable.getCode(),
                    "What was sent could not be read (" + unreadable.getReason() + "). Nothing was kept; go back and"
                            + " send it again.");
        } else {
            ownFault(context, fault);
        }
    }

    /** A file that comes in is first put down beside the shop, in the system's folder for what passes. */
    private static void noRoomToReceive(Context context, IOException unwritten) {
        LOG.log(Level.WARNING, "what was sent cannot be put down: " + unwritten.getMessage());
        context.header("Connection", "close");
        page(
                context,
                NO_ROOM,
                "What was sent could not be put down in " + System.getProperty("java.io.tmpdir") + " ("
                        + unwritten.getMessage()
                        + "). See whether the disk is full, then bring it again; everything saved before is as it was.");
    }

    /** The fault of writing a file behind this one; a connection that breaks is none. */
    private static @Nullable IOException unwritten(Exception fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof FileSystemException file) {
                return file;
            }
            if (cause instanceof IOException broken
                    && Arrays.stream(broken.getStackTrace())
                            .anyMatch(step -> step.getClassName().equals(FILE))) {
                return broken;
            }
        }
        return null;
    }

    private static @Nullable HttpException unreadable(Exception fault) {
        Throwable cause = fault;
        while (cause != null && !(cause instanceof HttpException)) {
            cause = cause.getCause();
        }
        return (HttpException) cause;
    }

    private static void changedMeanwhile(Context context) {
        context.status(CONFLICT);
        Templates.show(
                context,
                new RefusalPage(
                        FRAME,
                        "Somebody else changed this since the page was opened; nothing was overwritten. Open the page"
                                + " again and look at what stands there now.",
                        "",
                        written(context) ? typed(context) : List.of()));
    }

    /** Whether somebody wrote into a form; what comes with a file is not shown again. */
    private static boolean written(Context context) {
        return context.method().name().equals("POST") && !context.isMultipart();
    }

    private static void diskRefuses(Context context, DiskRefuses full) {
        LOG.log(Level.WARNING, "the disk refuses: " + full.getMessage());
        boolean posted = written(context);
        context.status(NO_ROOM);
        Templates.show(
                context,
                new RefusalPage(
                        FRAME,
                        "This could not be written to the shop's folder: the disk is full, may not be written or is"
                                + " failing (" + full.getMessage()
                                + "). Everything saved before is as it was. Make room, then try again.",
                        posted ? context.path() : "",
                        posted ? typed(context) : List.of()));
    }

    private static List<Map.Entry<String, String>> typed(Context context) {
        List<Map.Entry<String, String>> typed = new ArrayList<>();
        context.formParamMap().forEach((name, values) -> values.forEach(value -> typed.add(Map.entry(name, value))));
        return typed;
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
