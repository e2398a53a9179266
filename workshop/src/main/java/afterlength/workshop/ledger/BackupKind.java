package afterlength.workshop.ledger;

/** Why a backup was made; the first part of its folder's name. */
public enum BackupKind {
    DAILY("daily", "daily"),
    BEFORE_MIGRATION("before-version", "before the database was brought to a newer version"),
    BY_HAND("by-hand", "asked for");

    private final String start;
    private final String words;

    BackupKind(String start, String words) {
        this.start = start;
        this.words = words;
    }

    /** What the name of such a backup begins with. */
    String start() {
        return start;
    }

    public String words() {
        return words;
    }
}
