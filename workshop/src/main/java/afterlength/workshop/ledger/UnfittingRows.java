package afterlength.workshop.ledger;

/** A file of rows that does not belong to its table; the message says how. */
public final class UnfittingRows extends RuntimeException {
    UnfittingRows(String table, String how) {
        super("The rows of “" + table + "” do not fit: " + how + ".");
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
