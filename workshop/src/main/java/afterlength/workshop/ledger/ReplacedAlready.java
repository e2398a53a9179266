package afterlength.workshop.ledger;

/** The row of history that a change names was replaced by somebody else in between; nothing was written. */
public final class ReplacedAlready extends RuntimeException {
    ReplacedAlready(Throwable cause) {
        super(cause.getMessage(), cause);
    }
}
