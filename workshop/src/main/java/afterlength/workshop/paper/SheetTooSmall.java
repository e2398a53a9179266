package afterlength.workshop.paper;

/** A drawing has no room on a sheet at 1 : 1; the message says both sizes. Whoever asked for the sheet is told, nothing is scaled. */
public final class SheetTooSmall extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    SheetTooSmall(String message) {
        super(message);
    }
}
