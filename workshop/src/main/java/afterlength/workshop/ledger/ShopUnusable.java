package afterlength.workshop.ledger;

/** The shop folder or its database cannot be used; the message says why and what to do, and nothing was changed. */
public final class ShopUnusable extends RuntimeException {
    public ShopUnusable(String message, Throwable cause) {
        super(message, cause);
    }
}
