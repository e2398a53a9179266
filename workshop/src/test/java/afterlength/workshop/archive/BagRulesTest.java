package afterlength.workshop.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The rules of RFC 8493, one by one, on a bag of a real shop. The numbers are sections of the RFC; the rules are put down here from
 * memory and checked without any code of the program.
 */
class BagRulesTest {
    @TempDir
    Path root;

    private Map<String, byte[]> files;

    @BeforeEach
    void make() throws IOException {
        files = Bags.files(
                new SmallShop(root.resolve("shop")).archive(ArchiveWish.wholeShop(), root.resolve("bag.zip")));
    }

    /** 2: one base directory; bagit.txt, data/ and a payload manifest in it. */
    @Test
    void theBaseDirectoryHoldsWhatIsRequired() {
        assertThat(files.keySet()).allMatch(name -> name.startsWith("bag/"));
        assertThat(files).containsKeys("bag/bagit.txt", "bag/manifest-sha256.txt");
        assertThat(files.keySet()).anyMatch(name -> name.startsWith("bag/data/"));
        assertThat(tags())
                .containsExactlyInAnyOrder(
                        "bagit.txt", "bag-info.txt", "manifest-sha256.txt", "tagmanifest-sha256.txt");
    }

    /** 2.1.1: exactly two lines, version and encoding, without a byte order mark. */
    @Test
    void theDeclarationHasTwoLines() {
        assertThat(Bags.text(files, "bag/bagit.txt"))
                .isEqualTo("BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n");
    }

    /** 2.1.3: each payload file is listed once, with its checksum and a path that begins with data/. */
    @Test
    void thePayloadManifestListsEachFileOnceWithItsSum() {
        List<String> paths = new ArrayList<>();
        for (String line : lines("manifest-sha256.txt")) {
            assertThat(line).matches("[0-9a-f]{64} +data/[^\\\\]+");
            String path = line.substring(66);
            paths.add(path);
            assertThat(Bags.sha256(file(path))).as(path).isEqualTo(line.substring(0, 64));
        }
        Set<String> payload = files.keySet().stream()
                .filter(name -> name.startsWith("bag/data/"))
                .map(name -> name.substring("bag/".length()))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(paths).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(payload);
    }

    /** 2.2.1: tag files are listed, payload files and tag manifests are not. */
    @Test
    void theTagManifestListsTheOtherTagFiles() {
        List<String> listed = lines("tagmanifest-sha256.txt").stream()
                .map(line -> line.substring(66))
                .toList();
        assertThat(listed).containsExactlyInAnyOrder("bagit.txt", "bag-info.txt", "manifest-sha256.txt");
        for (String line : lines("tagmanifest-sha256.txt")) {
            assertThat(Bags.sha256(file(line.substring(66)))).isEqualTo(line.substring(0, 64));
        }
    }

    /** 2.2.2: label, colon, value; Payload-Oxum is octets, a point, streams; Bagging-Date is a date. */
    @Test
    void theFactsAreLabelledAndTrue() {
        assertThat(lines("bag-info.txt")).allMatch(line -> line.matches("[A-Za-z-]+: \\S.*"));
        long bytes = 0;
        long count = 0;
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().startsWith("bag/data/")) {
                bytes += file.getValue().length;
                count++;
            }
        }
        assertThat(lines("bag-info.txt")).contains("Payload-Oxum: " + bytes + "." + count, "Bagging-Date: 2026-03-02");
        assertThat(lines("bag-info.txt").stream().filter(line -> line.startsWith("Payload-Oxum")))
                .hasSize(1);
    }

    /** 2.3 and 6.1.3: all tag files are UTF-8 with line ends of one kind, and names are plain on every system. */
    @Test
    void tagFilesAndNamesArePlain() {
        for (String tag : tags()) {
            String text = new String(file(tag), StandardCharsets.UTF_8);
            assertThat(text.getBytes(StandardCharsets.UTF_8)).isEqualTo(file(tag));
            assertThat(text).endsWith("\n").doesNotContain("\r").doesNotContain("\uFEFF");
        }
        assertThat(files.keySet()).allMatch(name -> name.matches("[A-Za-z0-9._/-]+"));
    }

    /** 2.1.3: a line end or a percent sign in a path is written as %0A, %0D, %25, and read back. */
    @Test
    void hardPathsAreEncodedInTheManifest() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BagWriter bag = new BagWriter(out, "b", Instant.parse("2026-03-02T09:15:00Z"))) {
            bag.add("50%25.txt", "x");
            bag.finish(new LinkedHashMap<>());
        }
        Path file = Files.write(root.resolve("hard.zip"), out.toByteArray());
        assertThat(Bags.text(Bags.files(file), "b/manifest-sha256.txt")).endsWith("  data/50%2525.txt\n");
        try (BagReader bag = BagReader.open(file)) {
            bag.check(Progress.NOBODY);
            assertThat(bag.payload("50%25.txt").readAllBytes()).isEqualTo("x".getBytes(StandardCharsets.UTF_8));
        }
    }

    private List<String> tags() {
        return files.keySet().stream()
                .map(name -> name.substring("bag/".length()))
                .filter(name -> !name.startsWith("data/"))
                .toList();
    }

    private List<String> lines(String tag) {
        return Bags.text(files, "bag/" + tag).lines().toList();
    }

    private byte[] file(String path) {
        return java.util.Objects.requireNonNull(files.get("bag/" + path), path);
    }
}
