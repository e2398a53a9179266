package afterlength.workshop.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The files of a shop that are named by the SHA-256 of their bytes: photographs and logger files. */
final class KeptFiles {
    private static final List<String> FOLDERS = List.of("photographs", "loggers");

    private KeptFiles() {}

    /** Sizes in bytes by place from the shop's folder. */
    static Map<String, Long> list(Path shop) throws IOException {
        Map<String, Long> files = new TreeMap<>();
        for (String folder : FOLDERS) {
            if (Files.isDirectory(shop.resolve(folder))) {
                list(shop, folder, files);
            }
        }
        return files;
    }

    private static void list(Path shop, String folder, Map<String, Long> files) throws IOException {
        try (DirectoryStream<Path> inside = Files.newDirectoryStream(shop.resolve(folder))) {
            for (Path file : inside) {
                String name = file.getFileName().toString();
                if (name.matches("[0-9a-f]{64}")) {
                    files.put(folder + "/" + name, Files.size(file));
                }
            }
        } catch (UncheckedIOException broken) {
            throw broken.getCause();
        }
    }

    /** Whether the bytes are still those the file is named by. */
    static boolean isWhole(Path file) throws IOException {
        return sha256(file).equals(file.getFileName().toString());
    }

    static String sha256(Path file) throws IOException {
        try (InputStream bytes = Files.newInputStream(file)) {
            return Sha256.of(bytes);
        }
    }
}
