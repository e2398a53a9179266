package afterlength.workshop.work;

import java.time.LocalDate;
import java.util.List;

/** The checks promised when instruments went home, near a day; wired in {@code start}. */
public interface ComingChecks {
    /** A shop that promises none. */
    ComingChecks NONE = today -> List.of();

    /** Those due soon or lately missed, the earliest first. */
    List<ComingCheck> list(LocalDate today);
}
