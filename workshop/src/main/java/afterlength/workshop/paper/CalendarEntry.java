package afterlength.workshop.paper;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;

/**
 * Something to come that a calendar can hold.
 *
 * @param uid the same for the same thing, so that a calendar that reads it again changes its entry rather than adding one
 * @param when a whole day, or a span of exact length
 * @param summary one line
 * @param description more words, or none
 * @param stamped when this wording was made
 */
public record CalendarEntry(String uid, When when, String summary, String description, Instant stamped) {

    /** When it is. */
    public sealed interface When {
        /** All of a day, wherever the calendar is read. */
        record Day(LocalDate on) implements When {}

        /**
         * From a moment on for an exact time, as a clamp needs it: PT24H is twenty-four hours even across the change of the clock, P1D
         * is a calendar day.
         */
        record Span(Instant from, Duration length) implements When {
            public Span {
                if (length.isNegative() || length.isZero()) {
                    throw new IllegalArgumentException("a span lasts longer than " + length);
                }
            }
        }
    }

    public CalendarEntry {
        if (uid.isBlank() || summary.isBlank()) {
            throw new IllegalArgumentException("a calendar entry has an id and a line of words");
        }
    }

    public static CalendarEntry day(String uid, LocalDate on, String summary, String description, Instant stamped) {
        return new CalendarEntry(uid, new When.Day(on), summary, description, stamped);
    }

    public static CalendarEntry span(
            String uid, Instant from, Duration length, String summary, String description, Instant stamped) {
        return new CalendarEntry(uid, new When.Span(from, length), summary, description, stamped);
    }
}
