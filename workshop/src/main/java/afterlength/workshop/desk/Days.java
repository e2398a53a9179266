package afterlength.workshop.desk;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How days and times are written for people. */
public final class Days {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.UK);
    private static final DateTimeFormatter WEEKDAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.UK);
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

    public static LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, ZoneId.systemDefault());
    }
}
