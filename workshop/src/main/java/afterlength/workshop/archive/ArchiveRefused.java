package afterlength.workshop.archive;

/** An archive that is not read in; the message says what is wrong with it. Nothing was kept of it. */
public final class ArchiveRefused extends RuntimeException {
    ArchiveRefused(String message) {
        super(message);
    }

    @Override
    public String getMessage() {
        return String.valueOf(super.getMessage());
    }
}
