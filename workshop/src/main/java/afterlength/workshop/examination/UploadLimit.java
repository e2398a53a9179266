package afterlength.workshop.examination;

import afterlength.workshop.desk.Desk;
import afterlength.workshop.desk.Figures;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;

/** Refuses an upload by the length that its browser announces, before any of it is written to disk. */
final class UploadLimit {
    private static final int TOO_LARGE = 413;
    private static final double MB = 1_048_576;

    private UploadLimit() {}

    static void check(Context context) {
        double announced_MB = context.req().getContentLengthLong() / MB;
        if (announced_MB > Desk.LARGEST_UPLOAD_MB) {
            letItRunOut(context);
            throw new HttpResponseException(
                    TOO_LARGE,
                    "The files brought together have " + Figures.fixed(announced_MB, 0) + " MB; at most "
                            + Desk.LARGEST_UPLOAD_MB
                            + " MB are taken at once. Nothing was kept; bring them in smaller groups.");
        }
    }

    /** A browser reads the answer only when it has sent everything; what it sends is thrown away. */
    private static void letItRunOut(Context context) {
        try {
            context.req().getInputStream().transferTo(OutputStream.nullOutputStream());
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
