package afterlength.workshop.ledger;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestOutputStream;
import java.security.MessageDigest;

/**
 * Photographs as files, each named by the SHA-256 of its bytes and never altered. A file is written beside its place, forced to
 * disk and then moved there in one step, so that a killed process leaves either the whole picture or none.
 */
public final class Photographs {
    private final Path folder;

    public Photographs(ShopFolder shop) {
        this(shop.photographs());
    }

    private Photographs(Path folder) {
        this.folder = folder;
    }

    /** Files of climate loggers, kept in the same way in a folder of their own. */
    public static Photographs ofLoggers(ShopFolder shop) {
        return new Photographs(shop.loggers());
    }

    /** Keeps the bytes and answers their name, 64 hexadecimal digits. Keeping the same bytes twice keeps one file. */
    public String keep(InputStream bytes) throws IOException {
        Path part = Files.createTempFile(folder, "incoming-", ".part");
        try {
            String name = writeThrough(bytes, part);
            Files.move(part, file(name), StandardCopyOption.ATOMIC_MOVE);
            return name;
        } finally {
            Files.deleteIfExists(part);
        }
    }

    public Path file(String sha256) {
        if (!sha256.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("a photograph is named by 64 hexadecimal digits, not " + sha256);
        }
        return folder.resolve(sha256);
    }

    private static String writeThrough(InputStream bytes, Path part) throws IOException {
        MessageDigest sha256 = Sha256.digest();
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.WRITE);
                OutputStream out =
                        new DigestOutputStream(java.nio.channels.Channels.newOutputStream(channel), sha256)) {
            bytes.transferTo(out);
            channel.force(true);
        }
        return Sha256.hex(sha256);
    }
}
