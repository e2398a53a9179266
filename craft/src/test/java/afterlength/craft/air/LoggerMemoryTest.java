package afterlength.craft.air;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A million rows are read by a program that has 64 MiB in all; read whole, the file alone would fill that. */
class LoggerMemoryTest {
    @Test
    void aMillionRowsInLittleMemory() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx64m",
                        "-cp",
                        System.getProperty("java.class.path"),
                        MillionRows.class.getName())
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
        assertThat(said).startsWith(MillionRows.ROWS + " 0 ");
    }
}
