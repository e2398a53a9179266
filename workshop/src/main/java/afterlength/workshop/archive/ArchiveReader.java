package afterlength.workshop.archive;

import afterlength.workshop.ledger.FreshShop;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.ledger.UnfittingRows;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;

/**
 * Makes a shop of an archive again. Everything is checked and built in a folder beside the place and moved there in one step, so that
 * an archive that is refused, or a program that is killed, leaves nothing behind but at most that folder.
 */
public final class ArchiveReader {
    private static final long SPARE_BYTES = 50_000_000;

    private final Path archive;
    private final Progress progress;

    private ArchiveReader(Path archive, Progress progress) {
        this.archive = archive;
        this.progress = progress;
    }

    /**
     * Reads an archive into a folder that is not there yet, or is empty.
     *
     * @throws ArchiveRefused when the folder is not empty, or the archive is damaged, foreign or newer than this program
     */
    public static void read(Path archive, Path shop, Progress progress) throws IOException {
        Path place = shop.toAbsolutePath().normalize();
        checkEmpty(place);
        Path parent = place.getParent();
        if (parent == null || Files.isRegularFile(place)) {
            throw new ArchiveRefused("“" + place + "” cannot be a shop's folder. Name a folder that is not there yet.");
        }
        Files.createDirectories(parent);
        Path beside = Files.createTempDirectory(parent, "archive-reading-");
        try {
            Path built = beside.resolve("shop");
            checkRoom(archive, beside);
            new ArchiveReader(archive, progress).build(built);
            Files.deleteIfExists(place);
            Files.move(built, place, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            ShopCopy.remove(beside);
        }
    }

    private static void checkEmpty(Path place) throws IOException {
        if (!Files.isDirectory(place)) {
            return;
        }
        try (Stream<Path> files = Files.list(place)) {
            if (files.findAny().isPresent()) {
                throw new ArchiveRefused(
                        "The folder " + place
                                + " is not empty. An archive is read into an empty folder only, so that nothing is mixed; name another.");
            }
        }
    }

    private void build(Path root) throws IOException {
        try (BagReader bag = BagReader.open(archive)) {
            int version = checkVersion(bag);
            bag.check(progress);
            ShopFolder folder = ShopFolder.open(root);
            takeRows(bag, folder, version);
            takeFiles(bag, Contents.PHOTOGRAPHS, new Photographs(folder));
            takeFiles(bag, Contents.LOGGERS, Photographs.ofLoggers(folder));
            Ledger.open(folder).close();
        } catch (UnfittingRows unfitting) {
            throw new ArchiveRefused(
                    "The archive was changed after it was made, or made elsewhere. " + unfitting.getMessage());
        }
    }

    private static int checkVersion(BagReader bag) {
        String format = bag.fact(ArchiveMaker.FORMAT_FACT);
        String version = bag.fact(ArchiveMaker.VERSION_FACT);
        int newest = FreshShop.newestVersion();
        if (!format.equals(ArchiveMaker.FORMAT)
                || !version.matches("[1-9]\\d{0,5}")
                || Integer.parseInt(version) > newest) {
            throw new ArchiveRefused("The archive was made by a newer version of this program (format " + format
                    + ", database " + version + "; this one reads format " + ArchiveMaker.FORMAT + ", database up to "
                    + newest
                    + "). Read it with that version.");
        }
        return Integer.parseInt(version);
    }

    private static void checkRoom(Path archive, Path place) throws IOException {
        try (BagReader bag = BagReader.open(archive)) {
            checkVersion(bag);
            checkRoom(bag, place);
        }
    }

    private static void checkRoom(BagReader bag, Path place) throws IOException {
        long free = Files.getFileStore(place).getUsableSpace();
        if (bag.declaredBytes() > free - SPARE_BYTES) {
            throw new ArchiveRefused("The archive unpacks to " + bag.declaredBytes() / 1_000_000 + " MB; the disk of "
                    + place + " has " + free / 1_000_000 + " MB left. Make room, or name a folder on another disk.");
        }
    }

    private void takeRows(BagReader bag, ShopFolder folder, int version) throws IOException {
        try (FreshShop fresh = FreshShop.make(folder.database(), version)) {
            List<String> tables = fresh.tables();
            checkTables(bag, tables);
            int done = 0;
            for (String table : tables) {
                try (InputStream rows = bag.payload(Contents.TABLES + table + ".csv")) {
                    fresh.take(table, rows);
                }
                progress.told("Tables read", ++done, tables.size());
            }
            fresh.keep();
        }
    }

    private static void checkTables(BagReader bag, List<String> tables) {
        for (String path : bag.paths()) {
            if (path.startsWith(Contents.TABLES)
                    && !tables.contains(path.substring(Contents.TABLES.length()).replaceFirst("\\.csv$", ""))) {
                throw new ArchiveRefused(
                        "“data/" + path + "” is no table of a shop of that version; its rows would be lost.");
            }
        }
    }

    private void takeFiles(BagReader bag, String under, Photographs place) throws IOException {
        List<String> paths =
                bag.paths().stream().filter(path -> path.startsWith(under)).toList();
        int done = 0;
        for (String path : paths) {
            String name = path.substring(under.length()).replaceFirst("\\.[a-z]{3}$", "");
            if (!name.matches("[0-9a-f]{64}") || !bag.sum(path).equals(name)) {
                throw new ArchiveRefused("“data/" + path + "” is not named by the SHA-256 of its bytes.");
            }
            try (InputStream in = bag.payload(path)) {
                place.keep(in);
            }
            progress.told("Files of " + under.replace("/", "") + " read", ++done, paths.size());
        }
    }
}
