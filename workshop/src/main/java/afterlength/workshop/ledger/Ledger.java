package afterlength.workshop.ledger;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.sql.DataSource;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/**
 * The shop's database. A write is one transaction, on disk before the call returns (write-ahead log, full synchronisation), so
 * a process killed right afterwards has lost nothing. Writers wait for each other here rather than in the database.
 */
public final class Ledger {
    private final Jdbi jdbi;
    /**
     * Held for as long as the program runs: the log and its index then stay where they are, so that pages can be read on a disk
     * that has filled up meanwhile.
     */
    private final Connection anchor;

    private final ReentrantLock oneWriter = new ReentrantLock(true);

    private Ledger(DataSource source, Connection anchor) {
        jdbi = Jdbi.create(source);
        ColumnKinds.register(jdbi);
        this.anchor = anchor;
    }

    /**
     * Opens the database of a shop, making and migrating it as needed.
     *
     * @throws ShopUnusable when the file is no database of ours, is newer than this program, or cannot be written
     */
    public static Ledger open(ShopFolder folder) {
        DataSource source = SqliteSource.of(folder.database());
        Migrations.bringUpToDate(source, folder);
        try {
            Connection anchor = source.getConnection();
            new DatabaseFacts(anchor).version();
            return new Ledger(source, anchor);
        } catch (SQLException e) {
            throw new ShopUnusable(
                    "The database " + folder.database() + " cannot be opened (" + e.getMessage() + ").", e);
        }
    }

    /** Whether the shop's database is still in reach. */
    public boolean isOpen() {
        try {
            return !anchor.isClosed();
        } catch (SQLException gone) {
            return false;
        }
    }

    public <T> T read(Function<Handle, T> question) {
        try {
            return jdbi.withHandle(question::apply);
        } catch (RuntimeException thrown) {
            throw DiskRefuses.told(thrown);
        }
    }

    /**
     * Writes in one transaction.
     *
     * @throws DiskRefuses when the disk does not take it; nothing was changed
     * @throws ReplacedAlready when the row of history it names was replaced in between; nothing was changed
     */
    public <T> T write(Function<Handle, T> change) {
        oneWriter.lock();
        try {
            return jdbi.inTransaction(change::apply);
        } catch (RuntimeException thrown) {
            throw DiskRefuses.told(thrown);
        } finally {
            oneWriter.unlock();
        }
    }

    public void change(Consumer<Handle> change) {
        write(handle -> {
            change.accept(handle);
            return true;
        });
    }
}
