package afterlength.workshop.plan;

import afterlength.workshop.desk.Days;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;

/**
 * Where a moment stands across the week's drawing: the hours of an open day are broad, the night between two days is narrow, and a closed day
 * is narrow as a whole.
 */
final class WeekScale {
    private static final double NIGHT_MM = 4;
    private static final double CLOSED_MM = 7;

    private final LocalDate first;
    private final int days;
    private final BenchCalendar calendar;
    private final LocalTime opens;
    private final LocalTime closes;
    private final double left_mm;
    private final double open_mm;

    WeekScale(
            LocalDate first,
            int days,
            BenchCalendar calendar,
            LocalTime opens,
            LocalTime closes,
            double left_mm,
            double width_mm) {
        this.first = first;
        this.days = days;
        this.calendar = calendar;
        this.opens = opens;
        this.closes = closes;
        this.left_mm = left_mm;
        int open = 0;
        for (int n = 0; n < days; n++) {
            open += calendar.isOpen(first.plusDays(n)) ? 1 : 0;
        }
        double narrow_mm = open * NIGHT_MM + (days - open) * CLOSED_MM;
        this.open_mm = (width_mm - narrow_mm) / Math.max(1, open);
    }

    LocalDate day(int n) {
        return first.plusDays(n);
    }

    int days() {
        return days;
    }

    boolean isOpen(int n) {
        return calendar.isOpen(day(n));
    }

    /** Where a day begins; the day after the last is the end of the drawing. */
    double dayLeft_mm(int n) {
        double x = left_mm;
        for (int before = 0; before < n; before++) {
            x += isOpen(before) ? open_mm + NIGHT_MM : CLOSED_MM;
        }
        return x;
    }

    /** Where the open hours of a day end and its night begins. */
    double dayRight_mm(int n) {
        return dayLeft_mm(n) + (isOpen(n) ? open_mm : CLOSED_MM);
    }

    Instant from() {
        return Days.instant(first.atStartOfDay());
    }

    Instant to() {
        return Days.instant(first.plusDays(days).atStartOfDay());
    }

    /** Clipped to the drawing. */
    double x_mm(Instant at) {
        int n = (int) ChronoUnit.DAYS.between(first, Days.day(at));
        if (n < 0) {
            return dayLeft_mm(0);
        }
        if (n >= days) {
            return dayLeft_mm(days);
        }
        Instant opening = Days.instant(day(n).atTime(opens));
        Instant closing = Days.instant(day(n).atTime(closes));
        if (!isOpen(n)) {
            return dayLeft_mm(n) + CLOSED_MM * part(from(n), at, from(n + 1));
        }
        if (at.isBefore(opening)) {
            return n == 0 ? dayLeft_mm(0) : dayLeft_mm(n) - NIGHT_MM / 2 * (1 - part(from(n), at, opening));
        }
        return at.isAfter(closing)
                ? dayRight_mm(n) + NIGHT_MM / 2 * part(closing, at, from(n + 1))
                : dayLeft_mm(n) + open_mm * part(opening, at, closing);
    }

    private Instant from(int n) {
        return day(n).atStartOfDay(ZoneId.systemDefault()).toInstant();
    }

    private static double part(Instant from, Instant at, Instant to) {
        return (double) Duration.between(from, at).toSeconds()
                / Math.max(1, Duration.between(from, to).toSeconds());
    }
}
