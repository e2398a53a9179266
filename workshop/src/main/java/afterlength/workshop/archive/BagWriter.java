package afterlength.workshop.archive;

import java.io.ByteArrayInputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes a bag (BagIt 1.0, RFC 8493) as a ZIP: one folder that holds the declaration, facts about the bag, the payload in
 * {@code data/}, and manifests with the SHA-256 of every file. Each file passes once; nothing is kept beside the ZIP.
 * Source: docs/sources.md#bagit.
 */
final class BagWriter implements AutoCloseable {
    static final String DECLARATION = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";
    static final String DATA = "data/";

    private final ZipOutputStream zip;
    private final String folder;
    private final Instant made;
    private final List<Payload> payload = new ArrayList<>();
    private final List<Payload> tags = new ArrayList<>();

    BagWriter(OutputStream out, String folder, Instant made) {
        zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
        this.folder = folder + "/";
        this.made = made;
    }

    /** Writes the bytes of a file. */
    interface Filling {
        void writeTo(OutputStream out) throws IOException;
    }

    void add(String path, Filling filling) throws IOException {
        zip.setLevel(isPacked(path) ? Deflater.NO_COMPRESSION : Deflater.DEFAULT_COMPRESSION);
        Payload written = write(DATA + path, filling);
        payload.add(new Payload(path, written.bytes(), written.sha256()));
    }

    void add(String path, String text) throws IOException {
        add(path, text.getBytes(StandardCharsets.UTF_8));
    }

    void add(String path, byte[] bytes) throws IOException {
        add(path, out -> new ByteArrayInputStream(bytes).transferTo(out));
    }

    List<Payload> payload() {
        return List.copyOf(payload);
    }

    /** Writes the tag files; what is told about the bag is told in this order. */
    void finish(Map<String, String> facts) throws IOException {
        zip.setLevel(Deflater.DEFAULT_COMPRESSION);
        Map<String, String> told = new LinkedHashMap<>(facts);
        told.put("Payload-Oxum", payload.stream().mapToLong(Payload::bytes).sum() + "." + payload.size());
        tag("bagit.txt", DECLARATION);
        tag(
                "bag-info.txt",
                told.entrySet().stream()
                        .map(fact -> fact.getKey() + ": " + fact.getValue().replace('\n', ' ') + "\n")
                        .collect(Collectors.joining()));
        tag("manifest-sha256.txt", manifest(payload, DATA));
        write("tagmanifest-sha256.txt", out -> out.write(manifest(tags, "").getBytes(StandardCharsets.UTF_8)));
        zip.finish();
    }

    private void tag(String name, String text) throws IOException {
        tags.add(write(name, out -> out.write(text.getBytes(StandardCharsets.UTF_8))));
    }

    private static String manifest(List<Payload> files, String before) {
        return files.stream()
                .map(file -> file.sha256() + "  " + encoded(before + file.path()) + "\n")
                .collect(Collectors.joining());
    }

    /** A line end inside a path would end its line of the manifest. */
    private static String encoded(String path) {
        return path.replace("%", "%25").replace("\r", "%0D").replace("\n", "%0A");
    }

    private static boolean isPacked(String path) {
        return path.endsWith(".jpg") || path.endsWith(".png") || path.endsWith(".pdf");
    }

    private Payload write(String path, Filling filling) throws IOException {
        ZipEntry entry = new ZipEntry(folder + path);
        entry.setTime(made.toEpochMilli());
        zip.putNextEntry(entry);
        Counting counted = new Counting(zip, sha256());
        filling.writeTo(counted);
        zip.closeEntry();
        return new Payload(path, counted.bytes, counted.sum());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }

    /** Counts and sums what passes; whoever fills a file may close it without closing the ZIP. */
    private static final class Counting extends FilterOutputStream {
        private final MessageDigest digest;
        private long bytes;

        Counting(OutputStream zip, MessageDigest digest) {
            super(new DigestOutputStream(zip, digest));
            this.digest = digest;
        }

        @Override
        public void write(int value) throws IOException {
            out.write(value);
            bytes++;
        }

        @Override
        public void write(byte[] from, int at, int length) throws IOException {
            out.write(from, at, length);
            bytes += length;
        }

        @Override
        public void close() throws IOException {
            flush();
        }

        String sum() {
            return HexFormat.of().formatHex(digest.digest());
        }
    }
}
