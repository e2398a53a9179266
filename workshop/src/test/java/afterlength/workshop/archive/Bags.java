package afterlength.workshop.archive;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Archives taken apart and put together again by the plain library, to look into them and to spoil them. */
public final class Bags {
    private Bags() {}

    /** Every file by its whole name. */
    public static Map<String, byte[]> files(Path archive) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(archive))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                files.put(entry.getName(), zip.readAllBytes());
            }
        }
        return files;
    }

    static Path write(Map<String, byte[]> files, Path archive) throws IOException {
        try (OutputStream out = Files.newOutputStream(archive);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> file : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(file.getKey()));
                zip.write(file.getValue());
            }
        }
        return archive;
    }

    /** The lines of the manifest without those of files that tell the day or the name of the archive. */
    static Map<String, String> manifest(Path archive) throws IOException {
        Map<String, String> sums = new TreeMap<>();
        files(archive).forEach((name, bytes) -> {
            if (name.endsWith("/manifest-sha256.txt")) {
                text(bytes).lines().forEach(line -> sums.put(line.substring(66), line.substring(0, 64)));
            }
        });
        return sums;
    }

    /** Writes manifests and payload size anew, so that a spoilt bag is spoilt in what it says and not in its sums. */
    static Map<String, byte[]> resealed(Map<String, byte[]> spoilt, String folder) {
        Map<String, byte[]> files = new LinkedHashMap<>(spoilt);
        String data = folder + "/data/";
        long bytes = files.entrySet().stream()
                .filter(file -> file.getKey().startsWith(data))
                .mapToLong(file -> file.getValue().length)
                .sum();
        long count =
                files.keySet().stream().filter(name -> name.startsWith(data)).count();
        String info = text(files, folder + "/bag-info.txt")
                .replaceFirst("Payload-Oxum: .*", "Payload-Oxum: " + bytes + "." + count);
        files.put(folder + "/bag-info.txt", utf8(info));
        StringBuilder manifest = new StringBuilder();
        files.forEach((name, file) -> {
            if (name.startsWith(data)) {
                manifest.append(sha256(file))
                        .append("  ")
                        .append(name.substring(folder.length() + 1))
                        .append('\n');
            }
        });
        files.put(folder + "/manifest-sha256.txt", utf8(manifest.toString()));
        StringBuilder tags = new StringBuilder();
        for (String name : new String[] {"bagit.txt", "bag-info.txt", "manifest-sha256.txt"}) {
            tags.append(sha256(Objects.requireNonNull(files.get(folder + "/" + name))))
                    .append("  ")
                    .append(name)
                    .append('\n');
        }
        files.put(folder + "/tagmanifest-sha256.txt", utf8(tags.toString()));
        return files;
    }

    /** The text of a file that has to be there. */
    static String text(Map<String, byte[]> files, String name) {
        return text(Objects.requireNonNull(files.get(name), name));
    }

    static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (java.security.NoSuchAlgorithmException impossible) {
            throw new UncheckedIOException(new IOException(impossible));
        }
    }
}
