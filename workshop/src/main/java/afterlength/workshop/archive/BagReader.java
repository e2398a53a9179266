package afterlength.workshop.archive;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Reads a bag (RFC 8493) that arrived as a ZIP, and trusts it in nothing: names that lead out of the archive, files that unpack to
 * far more than they are, files that are missing, left over or changed are each refused. {@link #check} reads every byte once before
 * anything is made of it. Source: docs/sources.md#bagit.
 */
final class BagReader implements AutoCloseable {
    /** Pictures and table files pack to a tenth at best; beyond this a file was made to burst. Our own limit. */
    static final int LARGEST_PACKING = 200;

    /** Below this a file may pack as it likes. */
    static final long SMALL_BYTES = 1_000_000;

    static final int MOST_FILES = 200_000;
    private static final long LARGEST_TAG_FILE = 100_000_000;

    private final ZipFile zip;
    private final Map<String, ZipEntry> files = new TreeMap<>();
    private final Map<String, String> facts;
    private final Map<String, String> manifest;

    private BagReader(ZipFile zip) throws IOException {
        this.zip = zip;
        lookAtNames();
        checkDeclaration();
        facts = Collections.unmodifiableMap(readFacts());
        manifest = readManifest("manifest-sha256.txt");
    }

    /**
     * Opens the bag and reads what it says about itself.
     *
     * @throws ArchiveRefused when it is none
     */
    static BagReader open(Path file) throws IOException {
        ZipFile zip;
        try {
            zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
        } catch (ZipException damaged) {
            throw new ArchiveRefused("The file is no whole ZIP (" + damaged.getMessage()
                    + "). It was cut off or damaged on its way; fetch it again.");
        }
        try {
            return new BagReader(zip);
        } catch (IOException | RuntimeException refused) {
            zip.close();
            throw refused;
        }
    }

    private void lookAtNames() {
        if (zip.size() > MOST_FILES) {
            throw new ArchiveRefused("The archive has " + zip.size() + " files; at most " + MOST_FILES + " are read.");
        }
        Set<String> folders = new HashSet<>();
        for (ZipEntry entry : Collections.list(zip.entries())) {
            String name = entry.getName();
            checkName(name);
            int slash = name.indexOf('/');
            folders.add(slash < 0 ? "" : name.substring(0, slash));
            if (!entry.isDirectory() && files.put(name.substring(slash + 1), entry) != null) {
                throw new ArchiveRefused(
                        "The archive holds “" + name + "” twice, so it is not clear which one counts.");
            }
        }
        if (folders.size() != 1 || folders.contains("")) {
            throw new ArchiveRefused("The archive is no bag: all its files have to lie in one folder, and "
                    + folders.size() + " were found. It was not made by this program, or packed anew.");
        }
    }

    private static void checkName(String name) {
        boolean leadsOut = name.startsWith("/")
                || name.contains("\\")
                || name.matches("[A-Za-z]:.*")
                || List.of(name.split("/", -1)).contains("..")
                || name.chars().anyMatch(c -> c < ' ');
        if (leadsOut) {
            throw new ArchiveRefused("The archive holds a file named “" + name.replaceAll("\\p{Cntrl}", "?")
                    + "”, which would be written outside of the shop. It was not made by this program; do not use it.");
        }
    }

    private void checkDeclaration() throws IOException {
        String declared = tagFile("bagit.txt", "The archive is no bag: it does not say so in “bagit.txt”.");
        if (!declared.replace("\r\n", "\n").equals(BagWriter.DECLARATION)) {
            throw new ArchiveRefused("“bagit.txt” says “" + shortened(declared)
                    + "”; read are bags of BagIt version 1.0 with names in UTF-8.");
        }
        if (files.containsKey("fetch.txt")) {
            throw new ArchiveRefused(
                    "The archive leaves files to be fetched from elsewhere (fetch.txt); only whole archives are read.");
        }
    }

    private Map<String, String> readFacts() throws IOException {
        Map<String, String> read = new LinkedHashMap<>();
        for (String line :
                tagFile("bag-info.txt", "“bag-info.txt” is missing.").lines().toList()) {
            int colon = line.indexOf(':');
            if (colon > 0) {
                read.put(line.substring(0, colon), line.substring(colon + 1).strip());
            }
        }
        return read;
    }

    private Map<String, String> readManifest(String name) throws IOException {
        Map<String, String> sums = new LinkedHashMap<>();
        for (String line : tagFile(name, "The list of files “" + name + "” is missing.")
                .lines()
                .toList()) {
            if (!line.matches("[0-9a-fA-F]{64} [ *]?\\S.*")) {
                throw new ArchiveRefused("“" + name + "” has the line “" + shortened(line)
                        + "”; wanted are 64 hexadecimal digits and the name of a file.");
            }
            String path = line.substring(65).replaceFirst("^[ *]", "");
            if (sums.put(decoded(path), line.substring(0, 64).toLowerCase(java.util.Locale.ROOT)) != null) {
                throw new ArchiveRefused("“" + name + "” lists “" + path + "” twice.");
            }
        }
        return sums;
    }

    private static String decoded(String path) {
        return path.replace("%0A", "\n").replace("%0D", "\r").replace("%25", "%");
    }

    /** What the bag says about itself, by label. */
    String fact(String label) {
        String fact = facts.get(label);
        if (fact == null) {
            throw new ArchiveRefused("The archive does not say its “" + label + "”. It was not made by this program.");
        }
        return fact;
    }

    /** The paths of the payload, without the folder {@code data/}. */
    List<String> paths() {
        return files.keySet().stream()
                .filter(path -> path.startsWith(BagWriter.DATA))
                .map(path -> path.substring(BagWriter.DATA.length()))
                .toList();
    }

    /** Bytes of the payload as the bag declares them. */
    long declaredBytes() {
        String oxum = fact("Payload-Oxum");
        if (!oxum.matches("\\d{1,18}\\.\\d{1,9}")) {
            throw new ArchiveRefused(
                    "Its “Payload-Oxum” is “" + shortened(oxum) + "”; wanted are bytes, a point, files.");
        }
        return Long.parseLong(oxum.substring(0, oxum.indexOf('.')));
    }

    /**
     * Holds every file against the manifests.
     *
     * @throws ArchiveRefused at the first that is missing, left over, changed, or more than it declares
     */
    void check(Progress progress) throws IOException {
        long declared = declaredBytes();
        String oxum = fact("Payload-Oxum");
        long seen = 0;
        for (String path : manifest.keySet()) {
            if (!path.startsWith(BagWriter.DATA)) {
                throw new ArchiveRefused("“manifest-sha256.txt” lists “" + path + "”, which lies outside of “data/”.");
            }
        }
        for (String path : paths()) {
            if (!manifest.containsKey(BagWriter.DATA + path)) {
                throw new ArchiveRefused("“data/" + path + "” stands in no list; it was put in afterwards.");
            }
        }
        int done = 0;
        for (Map.Entry<String, String> listed : manifest.entrySet()) {
            seen += checkSum(listed.getKey(), listed.getValue());
            if (seen > declared) {
                throw new ArchiveRefused("The archive unpacks to more than the " + declared + " bytes it declares.");
            }
            progress.told("Checked", ++done, manifest.size());
        }
        if (!oxum.equals(seen + "." + manifest.size())) {
            throw new ArchiveRefused(
                    "The archive declares " + oxum + " (bytes.files) and holds " + seen + "." + manifest.size() + ".");
        }
        checkTags();
    }

    private void checkTags() throws IOException {
        Map<String, String> tags = readManifest("tagmanifest-sha256.txt");
        for (String wanted : List.of("bagit.txt", "bag-info.txt", "manifest-sha256.txt")) {
            if (!tags.containsKey(wanted)) {
                throw new ArchiveRefused("“tagmanifest-sha256.txt” does not list “" + wanted + "”.");
            }
        }
        for (Map.Entry<String, String> listed : tags.entrySet()) {
            checkSum(listed.getKey(), listed.getValue());
        }
    }

    private long checkSum(String path, String wanted) throws IOException {
        ZipEntry entry = files.get(path);
        if (entry == null) {
            throw new ArchiveRefused("“" + path + "” is missing from the archive.");
        }
        MessageDigest digest = sha256();
        long bytes;
        try (InputStream in = new DigestInputStream(guarded(entry), digest)) {
            bytes = in.transferTo(java.io.OutputStream.nullOutputStream());
        } catch (ZipException | EOFException damaged) {
            throw new ArchiveRefused(
                    "“" + path + "” cannot be unpacked (" + damaged.getMessage() + "); it is damaged.");
        }
        if (!HexFormat.of().formatHex(digest.digest()).equals(wanted)) {
            throw new ArchiveRefused(
                    "“" + path + "” is not what it was when the archive was made: its check sum differs.");
        }
        return bytes;
    }

    InputStream payload(String path) throws IOException {
        ZipEntry entry = files.get(BagWriter.DATA + path);
        if (entry == null) {
            throw new ArchiveRefused("“data/" + path + "” is missing from the archive.");
        }
        return guarded(entry);
    }

    String sum(String path) {
        return manifest.getOrDefault(BagWriter.DATA + path, "");
    }

    private InputStream guarded(ZipEntry entry) throws IOException {
        return new GuardedStream(zip.getInputStream(entry), entry.getName(), entry.getCompressedSize());
    }

    private String tagFile(String name, String whenMissing) throws IOException {
        ZipEntry entry = files.get(name);
        if (entry == null) {
            throw new ArchiveRefused(whenMissing);
        }
        try (InputStream in = guarded(entry)) {
            byte[] bytes = in.readNBytes((int) LARGEST_TAG_FILE);
            return new String(bytes, StandardCharsets.UTF_8);
        } catch (ZipException | EOFException damaged) {
            throw new ArchiveRefused(
                    "“" + name + "” cannot be unpacked (" + damaged.getMessage() + "); it is damaged.");
        }
    }

    private static String shortened(String text) {
        String line = text.replaceAll("\\p{Cntrl}+", " ").strip();
        return line.length() > 60 ? line.substring(0, 60) + "…" : line;
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
}
