package afterlength.workshop.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Writes that are on the disk, not only on their way to it, before they return. */
final class DiskWrites {
    private DiskWrites() {}

    static void text(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardCharsets.UTF_8);
        force(file);
    }

    /** Copies beside the place, forces and moves there in one step: a killed process leaves the whole file or none. */
    static void copy(Path from, Path to) throws IOException {
        Path part = to.resolveSibling(to.getFileName() + ".part");
        Files.copy(from, part, StandardCopyOption.REPLACE_EXISTING);
        force(part);
        Files.move(part, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    static void force(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Makes names in a folder last; where the platform cannot, the next write does. */
    static void forceNames(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notOnThisPlatform) {
            return;
        }
    }

    static void removeFolder(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> inside;
        try (Stream<Path> walk = Files.walk(folder)) {
            inside = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path each : inside) {
            Files.deleteIfExists(each);
        }
    }
}
