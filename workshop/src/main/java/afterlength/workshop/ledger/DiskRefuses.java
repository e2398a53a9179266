package afterlength.workshop.ledger;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** The disk is full, may not be written or is failing; the change was rolled back and the database is as it was. */
public final class DiskRefuses extends RuntimeException {
    private static final int PRIMARY = 0xff;
    private static final Set<Integer> CODES = Set.of(
            SQLiteErrorCode.SQLITE_FULL.code,
            SQLiteErrorCode.SQLITE_READONLY.code,
            SQLiteErrorCode.SQLITE_IOERR.code,
            SQLiteErrorCode.SQLITE_CANTOPEN.code);

    DiskRefuses(String message, Throwable cause) {
        super(message, cause);
    }

    /** Turns what the database throws into what happened, where that is known; anything else comes back as it is. */
    static RuntimeException told(RuntimeException thrown) {
        SQLiteException database = find(thrown);
        if (database != null && CODES.contains(database.getResultCode().code & PRIMARY)) {
            return new DiskRefuses(String.valueOf(database.getMessage()), thrown);
        }
        boolean replaced =
                database != null && String.valueOf(database.getMessage()).contains(".replaces)");
        return replaced ? new ReplacedAlready(thrown) : thrown;
    }

    private static @Nullable SQLiteException find(@Nullable Throwable thrown) {
        Throwable cause = thrown;
        while (cause != null && !(cause instanceof SQLiteException)) {
            cause = cause.getCause();
        }
        return (SQLiteException) cause;
    }
}
