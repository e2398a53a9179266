package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Once as a real process, with a terminal that is not UTF-8: exit code, streams and letters are those of the contract. */
class ProcessTest {
    @Test
    void aRefusedQuestionExitsWithTwoAndSpeaksUtf8() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Dfile.encoding=US-ASCII",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        "afterlength.start.Main",
                        "moisture")
                .start();
        try (var in = process.getOutputStream()) {
            in.write("{\"temperature_C\":99,\"relative_humidity_pct\":50}".getBytes(StandardCharsets.UTF_8));
        }
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isEqualTo(2);
        assertThat(err).isEmpty();
        assertThat(new Typed(2, out, err).problems())
                .containsExactly(
                        "/temperature_C: temperature_C is 99 °C; give -1.1111 to 60 °C, the range in which the curve"
                                + " of wood moisture was checked.");
    }
}
