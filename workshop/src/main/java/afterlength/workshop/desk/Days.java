package afterlength.workshop.desk;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** How days and times are written for people. */
public final class Days {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.UK);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.UK);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.UK);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.UK);

    private Days() {}

    public static String words(LocalDate day) {
        return DAY.format(day);
    }

    public static String weekday(LocalDate day) {
        return WEEKDAY.format(day);
    }

    /** In the time of this machine, which stands in the shop. */
    public static String words(Instant at) {
        return TIME.format(at.atZone(ZoneId.systemDefault()));
    }

    /** 16:20. */
    public static String clock(Instant at) {
        return clock(local(at).toLocalTime());
    }

    public static String clock(LocalTime time) {
        return CLOCK.format(time);
    }

    /** A time near now, as it is said aloud: 16:20, tomorrow 09:30, Thursday 12 March 09:30, 12 Mar 2027, 09:30. */
    public static String near(Instant at, Instant now) {
        long away = ChronoUnit.DAYS.between(day(now), day(at));
        if (away == 0) {
            return clock(at);
        }
        if (Math.abs(away) == 1) {
            return (away > 0 ? "tomorrow " : "yesterday ") + clock(at);
        }
        return day(at).getYear() == day(now).getYear() ? weekday(day(at)) + " " + clock(at) : words(at);
    }

    /** How far a day lies from today: today, tomorrow, in 6 days, 2 days ago. */
    public static String away(LocalDate day, LocalDate today) {
        long away = ChronoUnit.DAYS.between(today, day);
        if (away == 0) {
            return "today";
        }
        if (Math.abs(away) == 1) {
            return away > 0 ? "tomorrow" : "yesterday";
        }
        return away > 0 ? "in " + away + " days" : -away + " days ago";
    }

    public static LocalDateTime local(Instant at) {
        return LocalDateTime.ofInstant(at, ZoneId.systemDefault());
    }

    public static Instant instant(LocalDateTime local) {
        return local.atZone(ZoneId.systemDefault()).toInstant();
    }

    public static LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, ZoneId.systemDefault());
    }
}
