package afterlength.workshop.desk;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Small readings of a request that every stage needs. */
public final class Addresses {
    private Addresses() {}

    /**
     * An id in the address.
     *
     * @throws NotHere when it is no number
     */
    public static long id(Context context, String name) {
        String text = context.pathParam(name);
        if (!text.matches("\\d{1,18}")) {
            throw new NotHere(name, text);
        }
        return Long.parseLong(text);
    }

    /** The version of a row that a form was filled from. */
    public static int version(Typed typed) {
        String text = typed.raw("version");
        return text.matches("\\d{1,9}") ? Integer.parseInt(text) : 0;
    }

    /** What is said when two people changed the same thing; what stands now is shown beside what was typed. */
    public static void noteChangedMeanwhile(Typed typed, Map<String, String> stored) {
        typed.renew("version", stored.getOrDefault("version", "0"));
        Basis.noteChanged(typed, stored);
    }

    /** 422 when a form comes back with problems. */
    public static void status(Context context, Typed typed) {
        context.status(typed.sound() ? 200 : 422);
    }

    public static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
