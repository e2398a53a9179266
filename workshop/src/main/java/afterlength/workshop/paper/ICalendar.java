package afterlength.workshop.paper;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * A calendar file, RFC 5545: whole days as dates, moments in UTC, lengths in exact hours and minutes. Left out: alarms (whoever reads
 * the calendar sets their own), repetition. Source: docs/sources.md#content-lines.
 */
public final class ICalendar {
    public static final String MEDIA_TYPE = "text/calendar; charset=utf-8";

    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);
    private static final int MINUTES_PER_HOUR = 60;

    private final ContentLines lines = new ContentLines();

    private ICalendar() {}

    /** The calendar as text; it says so in UTF-8. */
    public static String of(List<CalendarEntry> entries) {
        ICalendar calendar = new ICalendar();
        calendar.lines
                .plain("BEGIN", "VCALENDAR")
                .plain("VERSION", "2.0")
                .plain("PRODID", "-//Afterlength//Workshop//EN")
                .plain("CALSCALE", "GREGORIAN");
        entries.forEach(calendar::write);
        return calendar.lines.plain("END", "VCALENDAR").toString();
    }

    private void write(CalendarEntry entry) {
        lines.plain("BEGIN", "VEVENT").words("UID", entry.uid()).plain("DTSTAMP", moment(entry.stamped()));
        write(entry.when());
        lines.words("SUMMARY", entry.summary());
        if (!entry.description().isEmpty()) {
            lines.words("DESCRIPTION", entry.description());
        }
        lines.plain("END", "VEVENT");
    }

    private void write(CalendarEntry.When when) {
        if (when instanceof CalendarEntry.When.Day day) {
            lines.plain("DTSTART;VALUE=DATE", DateTimeFormatter.BASIC_ISO_DATE.format(day.on()))
                    .plain("TRANSP", "TRANSPARENT");
        } else if (when instanceof CalendarEntry.When.Span span) {
            lines.plain("DTSTART", moment(span.from())).plain("DURATION", duration(span.length()));
        }
    }

    private static String moment(Instant at) {
        return MOMENT.format(at.truncatedTo(ChronoUnit.SECONDS));
    }

    /** PT26H30M; a part of a minute counts as one. */
    private static String duration(Duration length) {
        long minutes = length.plusSeconds(59).toMinutes();
        long hours = minutes / MINUTES_PER_HOUR;
        long rest = minutes % MINUTES_PER_HOUR;
        return "PT" + (hours > 0 ? hours + "H" : "") + (rest > 0 ? rest + "M" : "");
    }
}
