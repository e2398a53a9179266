package afterlength.workshop.agreement;

import java.time.LocalDate;

/**
 * The days between which a way would be ready, if it were agreed today.
 *
 * @param earliest when work goes quickly and every wait is short
 * @param latest when work goes slowly and every wait is long
 */
public record ReadySpan(LocalDate earliest, LocalDate latest) {
    public ReadySpan {
        if (latest.isBefore(earliest)) {
            throw new IllegalArgumentException("ready from " + earliest + " to " + latest
                    + "; the latest day has to be the earliest or a later one");
        }
    }
}
