package afterlength.workshop.advice;

/** Whether a condition holds for a finding, as far as it is known. */
enum Holds {
    YES,
    NO,
    /** A fact it asks for was not written down. */
    UNKNOWN;

    /** All together: one that does not hold is enough to fail. */
    Holds and(Holds other) {
        if (this == NO || other == NO) {
            return NO;
        }
        return this == UNKNOWN || other == UNKNOWN ? UNKNOWN : YES;
    }
}
