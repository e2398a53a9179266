package afterlength.workshop.archive;

import afterlength.sight.picture.OutgoingPicture;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.PersonWords;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.privacy.Eraser;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A copy of a shop as it is at one moment, from which an archive is made while work goes on. What is made to be handed out is cut down
 * to the instrument or the person, and its photographs are those without the camera's notes of place and people; they get the name of
 * their new bytes. The copy lies inside the shop's folder while it is needed and is removed afterwards.
 */
final class ShopCopy implements AutoCloseable {
    /** Of the settings, what stands on every paper anyway. */
    private static final Set<String> SETTINGS_THAT_GO_OUT =
            Set.of("shop_name", "address", "currency", "letter_paper", "demonstration", ArchiveNumber.SETTING);

    private final Path root;
    private final ShopFolder folder;
    private final List<String> leftOut = new ArrayList<>();

    private ShopCopy(Path root) {
        this.root = root;
        folder = ShopFolder.open(root.resolve("shop"));
    }

    static ShopCopy of(ShopAtHand shop, ArchiveWish wish, Progress progress) throws IOException {
        ShopCopy copy = new ShopCopy(Files.createTempDirectory(shop.folder().root(), Eraser.COPY_FOR_ARCHIVE));
        try {
            shop.ledger().copyTo(copy.folder.database());
            if (wish.goesOut()) {
                copy.cutDown(wish, new Photographs(shop.folder()), progress);
            } else {
                link(shop.folder().photographs(), copy.folder.photographs());
                link(shop.folder().loggers(), copy.folder.loggers());
            }
            return copy;
        } catch (IOException | RuntimeException failed) {
            copy.close();
            throw failed;
        }
    }

    ShopFolder folder() {
        return folder;
    }

    /** Pictures whose file is missing or cannot be read. */
    List<String> leftOut() {
        return List.copyOf(leftOut);
    }

    private void cutDown(ArchiveWish wish, Photographs originals, Progress progress) {
        try (Ledger ledger = Ledger.open(folder)) {
            wish.findTable().ifPresent(table -> ledger.cutDownTo(table, wish.id(), SETTINGS_THAT_GO_OUT));
            if (wish.withoutPeople()) {
                erasePeople(ledger);
            }
            takePictures(ledger, originals, progress);
        }
    }

    private void erasePeople(Ledger ledger) {
        Eraser eraser = new Eraser(folder, ledger);
        for (Owner owner : new OwnerStore(ledger).list()) {
            eraser.erase(owner.id(), PersonWords.of(owner), true, "archive", Instant.EPOCH);
        }
    }

    private void takePictures(Ledger ledger, Photographs originals, Progress progress) {
        List<String> names =
                ledger.read(handle -> handle.createQuery("SELECT DISTINCT sha256 FROM photograph ORDER BY sha256")
                        .mapTo(String.class)
                        .list());
        int done = 0;
        for (String name : names) {
            takePicture(ledger, originals, name);
            progress.told("Pictures freed of the camera's notes", ++done, names.size());
        }
    }

    private void takePicture(Ledger ledger, Photographs originals, String name) {
        try {
            byte[] out = OutgoingPicture.of(Files.readAllBytes(originals.file(name)));
            String fresh = new Photographs(folder).keep(new ByteArrayInputStream(out));
            ledger.change(handle -> handle.createUpdate("UPDATE photograph SET sha256 = :fresh WHERE sha256 = :name")
                    .bind("fresh", fresh)
                    .bind("name", name)
                    .execute());
        } catch (NoSuchFileException | IllegalArgumentException unreadable) {
            leftOut.add(name);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** The same files under a second name; copied where the disk cannot do that. */
    private static void link(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.list(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path twin = to.resolve(file.getFileName());
                try {
                    Files.createLink(twin, file);
                } catch (UnsupportedOperationException | java.nio.file.FileSystemException notPossible) {
                    Files.copy(file, twin);
                }
            }
        }
    }

    @Override
    public void close() throws IOException {
        remove(root);
    }

    static void remove(Path root) throws IOException {
        if (!Files.exists(root)) {
            return;
        }
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(file);
            }
        }
    }
}
