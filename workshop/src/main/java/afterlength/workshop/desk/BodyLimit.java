package afterlength.workshop.desk;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/**
 * Refuses what is too large by the length that is announced, before any of it is kept. The answer goes out at once; what still
 * comes is thrown away up to a limit, because a browser reads the answer only when it has sent everything.
 */
final class BodyLimit {
    private static final double MB = 1_000_000;
    private static final double LARGEST_FORM_MB = 1;
    private static final int TOO_LARGE = 413;
    private static final int NO_LENGTH = 411;
    private static final long MOST_THROWN_AWAY = 2_000_000_000;

    private BodyLimit() {}

    static void check(Context context) {
        boolean files = String.valueOf(context.contentType()).startsWith("multipart/");
        double most_MB = files ? Desk.LARGEST_UPLOAD_MB : LARGEST_FORM_MB;
        double announced_MB = context.req().getContentLengthLong() / MB;
        if (context.header("Transfer-Encoding") != null) {
            refuse(context, NO_LENGTH, "What is sent here must say beforehand how long it is. Nothing was kept.");
        } else if (announced_MB > most_MB) {
            refuse(
                    context,
                    TOO_LARGE,
                    (files ? "The files brought together have " : "What was typed has ")
                            + Figures.fixed(announced_MB, announced_MB < 10 ? 1 : 0) + " MB; at most "
                            + Figures.plain(most_MB) + " MB are taken at once. Nothing was kept; "
                            + (files ? "bring them in smaller groups." : "shorten it."));
        }
    }

    private static void refuse(Context context, int status, String reason) {
        byte[] page = Refusals.text(reason).getBytes(StandardCharsets.UTF_8);
        try {
            context.status(status).contentType("text/html; charset=utf-8").header("Connection", "close");
            context.res().setContentLength(page.length);
            context.res().getOutputStream().write(page);
            context.res().flushBuffer();
            throwAway(context.req().getInputStream());
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        }
        context.skipRemainingHandlers();
    }

    private static void throwAway(InputStream sent) {
        byte[] some = new byte[65_536];
        try {
            int read = sent.read(some);
            for (long all = read; read >= 0 && all < MOST_THROWN_AWAY; all += read) {
                read = sent.read(some);
            }
        } catch (IOException | RuntimeException nobodyThere) {
            System.getLogger(BodyLimit.class.getName()).log(System.Logger.Level.DEBUG, "broke off", nobodyThere);
        }
    }
}
