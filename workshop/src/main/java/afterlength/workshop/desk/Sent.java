package afterlength.workshop.desk;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/**
 * When a button was really pressed. A screen that lost the workshop's machine keeps what was tapped and sends it later, with its
 * moment and a key by which it is taken once only.
 *
 * @param key empty for a form that was sent at once, without a script
 */
public record Sent(String key, Instant at) {
    /** What waited longer is better written by hand: nobody remembers the minutes. Our own choice. */
    private static final Duration LONGEST_WAIT = Duration.ofDays(3);

    public static Sent at(Instant now) {
        return new Sent("", now);
    }

    /** Reads both from the form; a moment ahead of our own clock is now. */
    public static Sent read(Context context, Instant now) {
        String key = Optional.ofNullable(context.formParam("sent_key")).orElse("");
        if (key.isEmpty()) {
            return at(now);
        }
        if (!key.matches("[0-9a-f-]{36}")) {
            throw new BadRequestResponse(
                    "The key of what was sent is “" + (key.length() > 40 ? key.substring(0, 40) : key)
                            + "”; it is 36 digits and hyphens that the page makes itself.");
        }
        Instant at = moment(Optional.ofNullable(context.formParam("sent_at")).orElse(""), now);
        if (Duration.between(at, now).compareTo(LONGEST_WAIT) > 0) {
            throw new BadRequestResponse("This was tapped on " + Days.words(Days.day(at))
                    + " and waited more than 3 days. Write it into the diary by hand, with its day.");
        }
        return new Sent(key, at.isAfter(now) ? now : at);
    }

    private static Instant moment(String text, Instant now) {
        try {
            return text.isEmpty() ? now : Instant.parse(text);
        } catch (DateTimeParseException none) {
            throw new BadRequestResponse(
                    "The moment of a tap is “" + (text.length() > 40 ? text.substring(0, 40) : text)
                            + "”; it is written such as 2026-11-04T13:15:00Z.");
        }
    }
}
