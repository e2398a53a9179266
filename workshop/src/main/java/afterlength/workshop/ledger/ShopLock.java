package afterlength.workshop.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The sign that a program has the shop open. The system takes it down when the program ends, however it ends. */
public final class ShopLock implements AutoCloseable {
    private final FileChannel channel;

    private ShopLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Hangs out the sign.
     *
     * @return empty when another program has the shop open
     * @throws ShopUnusable when the folder cannot be written
     */
    public static Optional<ShopLock> take(ShopFolder shop) {
        try {
            FileChannel channel = FileChannel.open(
                    shop.root().resolve("open.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (lock(channel) == null) {
                channel.close();
                return Optional.empty();
            }
            return Optional.of(new ShopLock(channel));
        } catch (IOException e) {
            throw ShopFolder.unwritable(shop.root(), e);
        }
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException hereAlready) {
            return null;
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException nothingToDo) {
            System.getLogger(ShopLock.class.getName()).log(System.Logger.Level.DEBUG, "lock", nothingToDo);
        }
    }
}
