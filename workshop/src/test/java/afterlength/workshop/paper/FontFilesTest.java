package afterlength.workshop.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The fonts are the files that were fetched, and their licences lie beside them. */
class FontFilesTest {
    @Test
    void everyFileHasTheSumWrittenDownForIt() throws Exception {
        for (Map.Entry<String, String> file : sums().entrySet()) {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(read(file.getKey()));
            assertThat(HexFormat.of().formatHex(digest)).as(file.getKey()).isEqualTo(file.getValue());
        }
    }

    @Test
    void everyFaceAndEachLicenceHasASum() throws IOException {
        assertThat(sums().keySet())
                .containsAll(Arrays.stream(Face.values()).map(Face::file).toList())
                .contains("IBMPlex-OFL-1.1.txt", "DejaVu-LICENSE.txt", "DroidSansFallback-Apache-2.0.txt")
                .hasSize(Face.values().length + 3);
    }

    private static Map<String, String> sums() throws IOException {
        return new String(read("SHA256SUMS"), StandardCharsets.UTF_8)
                .lines()
                .map(line -> line.split(" {2}", 2))
                .collect(Collectors.toMap(parts -> parts[1], parts -> parts[0]));
    }

    private static byte[] read(String file) throws IOException {
        try (InputStream stream = FontFilesTest.class.getResourceAsStream("fonts/" + file)) {
            return Objects.requireNonNull(stream, file).readAllBytes();
        }
    }
}
