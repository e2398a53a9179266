package afterlength.craft.air;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.Optional;

/**
 * A date and time as loggers write them: digits in the given order with any of {@code - / . } between, or the month as an English
 * word; the time before or behind the date, with or without seconds, by 24 or by 12 hours. No guess is made: 31/03 with the month
 * first is no date.
 */
final class LoggerTime {
    private static final String MONTHS = "janfebmaraprmayjunjulaugsepoctnovdec";
    private static final int MOST_NUMBERS = 7;

    private final int[] numbers = new int[MOST_NUMBERS];
    private final int[] digits = new int[MOST_NUMBERS];
    private int count;
    private int clockAt = -1;
    private int clockNumbers;
    private int month;
    private int halfDay = -1;

    private LoggerTime() {}

    static Optional<LocalDateTime> find(String text, DayOrder order) {
        LoggerTime time = new LoggerTime();
        try {
            return time.scan(text) ? time.dated(order) : Optional.empty();
        } catch (DateTimeException impossible) {
            return Optional.empty();
        }
    }

    /** Whether its date is in digits with a year that does not come first, so that day and month could be confused. */
    static boolean isAmbiguous(String text) {
        LoggerTime time = new LoggerTime();
        return time.scan(text) && time.month == 0 && time.digits[time.dateNumber(0)] != 4;
    }

    static boolean looksLikeTime(String text) {
        LoggerTime time = new LoggerTime();
        return time.scan(text);
    }

    private boolean scan(String text) {
        int n = 0;
        while (n < text.length()) {
            char letter = text.charAt(n);
            if (letter >= '0' && letter <= '9') {
                n = number(text, n);
            } else if (Character.isLetter(letter)) {
                n = word(text, n);
            } else {
                n = mark(text, n);
            }
            if (n < 0) {
                return false;
            }
        }
        return clockAt >= 0 && clockNumbers >= 2 && clockNumbers <= 3 && count - clockNumbers == (month == 0 ? 3 : 2);
    }

    private int number(String text, int from) {
        int n = from;
        int value = 0;
        while (n < text.length() && text.charAt(n) >= '0' && text.charAt(n) <= '9') {
            value = Math.min(99_999, value * 10 + text.charAt(n) - '0');
            n++;
        }
        if (count == MOST_NUMBERS) {
            return -1;
        }
        numbers[count] = value;
        digits[count] = n - from;
        count++;
        return n;
    }

    private int word(String text, int from) {
        int n = from;
        while (n < text.length() && Character.isLetter(text.charAt(n))) {
            n++;
        }
        String word = text.substring(from, n).toLowerCase(Locale.ROOT);
        int at = word.length() < 3 ? -1 : MONTHS.indexOf(word.substring(0, 3));
        if (at >= 0 && at % 3 == 0 && month == 0) {
            month = at / 3 + 1;
        } else if (word.equals("am") || word.equals("pm")) {
            halfDay = word.equals("pm") ? 1 : 0;
        } else if (!word.equals("t") || count != 3) {
            return -1;
        }
        return n;
    }

    /** Colons bind the numbers of the clock; a point behind its seconds begins a fraction, which is dropped. */
    private int mark(String text, int at) {
        char letter = text.charAt(at);
        if (letter == ':') {
            if (clockAt < 0) {
                clockAt = count - 1;
                clockNumbers = 1;
            }
            clockNumbers++;
            return count == 0 ? -1 : at + 1;
        }
        if ((letter == '.' || letter == ',') && clockNumbers == 3 && count == clockAt + 3) {
            int n = at + 1;
            while (n < text.length() && Character.isDigit(text.charAt(n))) {
                n++;
            }
            return n;
        }
        return letter == ' ' || letter == '/' || letter == '-' || letter == '.' || letter == '\u00a0' ? at + 1 : -1;
    }

    private Optional<LocalDateTime> dated(DayOrder order) {
        int first = numbers[dateNumber(0)];
        int second = numbers[dateNumber(1)];
        int year;
        int day;
        if (month > 0) {
            boolean yearFirst = digits[dateNumber(0)] == 4;
            year = yearFirst ? first : second;
            day = yearFirst ? second : first;
        } else {
            if ((digits[dateNumber(0)] == 4) != (order == DayOrder.YEAR_FIRST)) {
                return Optional.empty();
            }
            int third = numbers[dateNumber(2)];
            year = order == DayOrder.YEAR_FIRST ? first : third;
            month = order == DayOrder.MONTH_FIRST ? first : second;
            day = order == DayOrder.YEAR_FIRST ? third : order == DayOrder.DAY_FIRST ? first : second;
        }
        return Optional.of(
                LocalDateTime.of(year < 100 ? 2000 + year : year, month, day, hour(), numbers[clockAt + 1], seconds()));
    }

    private int hour() {
        int hour = numbers[clockAt];
        if (halfDay < 0) {
            return hour;
        }
        return hour < 1 || hour > 12 ? 99 : hour % 12 + 12 * halfDay;
    }

    private int seconds() {
        return clockNumbers == 3 ? numbers[clockAt + 2] : 0;
    }

    /** The place of a number of the date, wherever the clock stands. */
    private int dateNumber(int n) {
        return clockAt == 0 ? clockNumbers + n : n;
    }
}
