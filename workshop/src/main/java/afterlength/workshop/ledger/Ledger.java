package afterlength.workshop.ledger;

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
    private final ReentrantLock oneWriter = new ReentrantLock(true);

    private Ledger(DataSource source) {
        jdbi = Jdbi.create(source);
        ColumnKinds.register(jdbi);
    }

    /**
     * Opens the database of a shop, making and migrating it as needed.
     *
     * @throws ShopUnusable when the file is no database of ours, is newer than this program, or cannot be written
     */
    public static Ledger open(ShopFolder folder) {
        DataSource source = SqliteSource.of(folder.database());
        Migrations.bringUpToDate(source, folder);
        return new Ledger(source);
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
