package afterlength.workshop.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Set;
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
public final class Ledger implements AutoCloseable {
    private final Jdbi jdbi;
    /**
     * Held for as long as the program runs: the log and its index then stay where they are, so that pages can be read on a disk
     * that has filled up meanwhile.
     */
    private final Connection anchor;

    private final Readers readers;

    private final ReentrantLock oneWriter = new ReentrantLock(true);

    private Ledger(DataSource source, Connection anchor) {
        jdbi = Jdbi.create(source);
        ColumnKinds.register(jdbi);
        readers = new Readers(jdbi);
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

    /** Lets go of the file. The shop at hand stays open as long as the program; a copy made for a while does not. */
    @Override
    public void close() {
        readers.close();
        try {
            anchor.close();
        } catch (SQLException e) {
            throw new ShopUnusable("The database cannot be closed (" + e.getMessage() + ").", e);
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

    /** Reads; every question inside sees what was written last. */
    public <T> T read(Function<Handle, T> question) {
        try {
            return readers.ask(question);
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

    /** Writes the database as it is at this moment into a new file, without what it holds of free pages. */
    public void copyTo(Path target) {
        jdbi.useHandle(handle -> handle.createUpdate("VACUUM INTO :target")
                .bind("target", target.toString())
                .execute());
    }

    /**
     * Cuts this database, which is a copy, down to what belongs to one row.
     *
     * @param settings names of the settings that stay
     */
    public void cutDownTo(String table, long id, Set<String> settings) {
        erase(handle -> {
            try {
                Excerpt.cut(handle.getConnection(), table, id, settings);
                return true;
            } catch (SQLException broken) {
                throw new IllegalStateException("the copy cannot be cut down: " + broken.getMessage(), broken);
            }
        });
    }

    /** The rows as files, all from the same moment. */
    public <T> T rows(RowsReader<T> reader) throws IOException {
        try (Handle handle = jdbi.open()) {
            return reader.read(new Rows(handle.getConnection()));
        } catch (SQLException broken) {
            throw new IOException("the database cannot be read: " + broken.getMessage(), broken);
        }
    }

    /** What is done with the rows. */
    @FunctionalInterface
    public interface RowsReader<T> {
        T read(Rows rows) throws SQLException, IOException;
    }

    /**
     * A change that may alter history, for erasing and for nothing else: triggers are set aside within the same transaction,
     * what is overwritten is overwritten with zeros, and afterwards the file is written anew, so that neither free pages nor the
     * log keep the old words. Fails, with nothing lost, while another program reads the same database.
     */
    public <T> T erase(Function<Handle, T> change) {
        oneWriter.lock();
        try (Handle handle = jdbi.open()) {
            handle.execute("PRAGMA secure_delete = ON");
            T answer = handle.inTransaction(inside -> HistoryDoor.open(inside, change));
            handle.execute("VACUUM");
            Integer busy = handle.createQuery("PRAGMA wal_checkpoint(TRUNCATE)")
                    .mapTo(Integer.class)
                    .first();
            if (busy != 0) {
                throw new IllegalStateException(
                        "the log of the database is still in use by another program; end it and erase again");
            }
            return answer;
        } finally {
            oneWriter.unlock();
        }
    }
}
