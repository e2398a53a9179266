package afterlength.workshop.work;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Whose hand writes from this screen: chosen once on Today, remembered by the browser for a year. */
final class Hands {
    private static final String COOKIE = "hand";
    private static final int A_YEAR_S = 31_536_000;

    private Hands() {}

    /** The remembered hand while it still works here, or else the usual one. */
    static String current(Context context, List<String> hands) {
        String hand = decoded(context.cookie(COOKIE));
        return hands.contains(hand) ? hand : hands.get(0);
    }

    /** A cookie that is none of ours is nobody's hand. */
    private static String decoded(@Nullable String kept) {
        try {
            return kept == null ? "" : URLDecoder.decode(kept, StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notOurs) {
            return "";
        }
    }

    static void remember(Context context, String hand) {
        Cookie cookie = new Cookie(COOKIE, URLEncoder.encode(hand, StandardCharsets.UTF_8));
        cookie.setMaxAge(A_YEAR_S);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.STRICT);
        context.cookie(cookie);
    }
}
