package afterlength.workshop.desk;

/** Asked for something that is not in the shop. */
public final class NotHere extends RuntimeException {
    public NotHere(String what, Object which) {
        super("There is no " + what + " " + which + " in this shop.");
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
