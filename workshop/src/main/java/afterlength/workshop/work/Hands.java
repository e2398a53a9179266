package afterlength.workshop.work;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Whose hand writes from this screen: chosen once on Today, remembered by the browser for a year. */
final class Hands {
    private static final String COOKIE = "hand";
    private static final int A_YEAR_S = 31_536_000;

    private Hands() {}

    /** The remembered hand while it still works here, or else the usual one. */
    static String current(Context context, List<String> hands) {
        String kept = context.cookie(COOKIE);
        String hand = kept == null ? "" : URLDecoder.decode(kept, StandardCharsets.UTF_8);
        return hands.contains(hand) ? hand : hands.get(0);
    }

    static void remember(Context context, String hand) {
        Cookie cookie = new Cookie(COOKIE, URLEncoder.encode(hand, StandardCharsets.UTF_8));
        cookie.setMaxAge(A_YEAR_S);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        context.cookie(cookie);
    }
}
