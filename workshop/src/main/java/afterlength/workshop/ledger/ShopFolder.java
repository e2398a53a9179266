package afterlength.workshop.ledger;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * One folder is the shop: {@code shop.db}, {@code photographs/}, {@code loggers/}, {@code backups/}. Copying the folder copies the workshop. What
 * lies in {@code thumbnails/} is derived from the photographs and may be thrown away: it is made again when asked for.
 */
public record ShopFolder(Path root) {

    /**
     * Makes the folder when it is not there yet.
     *
     * @throws ShopUnusable when it cannot be made or written
     */
    public static ShopFolder open(Path root) {
        ShopFolder folder = new ShopFolder(root.toAbsolutePath().normalize());
        try {
            Files.createDirectories(folder.photographs());
            Files.createDirectories(folder.loggers());
            Files.createDirectories(folder.backups());
        } catch (IOException e) {
            throw unwritable(folder.root(), e);
        }
        return folder;
    }

    /** Takes away what a killed process had begun to write beside its place; only for whoever holds the shop's lock. */
    public void sweep() {
        try {
            for (Path place : List.of(photographs(), loggers(), thumbnails())) {
                sweep(place);
            }
        } catch (IOException e) {
            throw unwritable(root, e);
        }
    }

    private static void sweep(Path place) throws IOException {
        if (Files.isDirectory(place)) {
            try (DirectoryStream<Path> parts = Files.newDirectoryStream(place, "*.part")) {
                for (Path part : parts) {
                    Files.deleteIfExists(part);
                }
            }
        }
    }

    static ShopUnusable unwritable(Path root, IOException cause) {
        return new ShopUnusable(
                "The shop folder " + root + " cannot be made or written (" + cause.getMessage()
                        + "). Choose a folder on this machine that you may write to, with --shop FOLDER.",
                cause);
    }

    public Path database() {
        return root.resolve("shop.db");
    }

    public Path photographs() {
        return root.resolve("photographs");
    }

    public Path thumbnails() {
        return root.resolve("thumbnails");
    }

    /** Files of climate loggers, as they were brought. */
    public Path loggers() {
        return root.resolve("loggers");
    }

    public Path backups() {
        return root.resolve("backups");
    }
}
