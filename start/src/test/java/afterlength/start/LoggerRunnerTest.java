package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LoggerRunnerTest {
    private static final String EUROPEAN = """
            Zeit;Temp;Feuchte
            25.10.2026 01:30;20,0;50,0
            25.10.2026 02:30;20,0;51,0
            25.10.2026 02:30;20,0;52,0
            25.10.2026 03:30;20,0;x
            25.10.2026 04:30;20,0;45,0
            """;

    @TempDir
    Path folder;

    @Test
    void whatTheFileDoesNotShowIsAskedFor() throws IOException {
        assertThat(asked(EUROPEAN).problems())
                .containsExactly("/day_order: day_order is missing. Add the key \"day_order\" and its value.");
    }

    @Test
    void aRecordIsAnsweredAndEveryRowNotCountedIsListed() throws IOException {
        Typed typed = asked(EUROPEAN, "{\"day_order\":\"day\",\"zone\":\"Europe/Berlin\",\"clock\":\"summer time\"}");
        assertThat(typed.err()).isEmpty();
        assertThat(typed.exit()).as(typed.out()).isZero();
        assertThat(typed.json().get("rows").asInt()).isEqualTo(5);
        assertThat(typed.json().get("readings").asInt()).isEqualTo(4);
        assertThat(typed.json().get("from").asString()).isEqualTo("2026-10-24T23:30:00Z");
        assertThat(typed.json().get("rejected").toString())
                .isEqualTo("[{\"first_line\":5,\"last_line\":5,\"reason\":\"has no readable humidity\","
                        + "\"row\":\"25.10.2026 03:30;20,0;x\"}]");
        assertThat(typed.json().get("notes").get(0).asString())
                .isEqualTo(
                        "From line 4 on, an hour comes twice because the clock was set back; the rows are read as its second "
                                + "pass.");
        assertThat(typed.json().get("caveats").toString()).contains("±0.5 %");
        assertThat(typed.json().get("hours_in_band").get("40 to 60 %").asDouble())
                .isEqualTo(5);
    }

    @Test
    void aFileThatIsNoRecordIsRefused() throws IOException {
        assertThat(asked("Dear customer,\n").problems())
                .containsExactly(
                        ": No line among the first 60 holds a time and two numbers. Give a file of a climate logger, with "
                                + "commas, semicolons or tabs.");
        assertThat(asked("t,c,h\n2026-01-01 10:00,99,50\n").problems())
                .containsExactly(
                        ": No row of the file could be counted. Line 2 has a temperature outside −50 to 80 °C: "
                                + "2026-01-01 10:00,99,50");
        String missing = folder.resolve("missing.csv").toString();
        assertThat(Typed.with("", "moisture", "--logger", missing).problems())
                .containsExactly(": The file \"" + missing + "\" is not there. Check its name.");
        assertThat(Typed.with("", "moisture", "--logger").problems())
                .containsExactly(": The option --logger wants a file behind it, such as --logger FILE.csv.");
    }

    @Test
    void wrongKeysAreListedTogether() throws IOException {
        assertThat(asked(
                                EUROPEAN,
                                "{\"day_order\":\"d\",\"zone\":\"Nowhere\",\"separator\":\"ab\",\"time_column\":1.5}")
                        .problems())
                .contains(
                        "/separator: separator is not one mark; give one such as , or ;",
                        "/zone: zone is not a place that is known; give one such as Europe/Berlin or UTC.",
                        "/time_column: time_column is 1.5; give a whole number.")
                .hasSize(4);
    }

    /** Whatever file and layout are given, they are answered or refused. To run one case again, use its seed. */
    @Test
    void neverAFaultOfOurOwn() throws IOException {
        for (long seed = 0; seed < 500; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            byte[] file = EUROPEAN.getBytes(StandardCharsets.UTF_8);
            for (int change = random.nextInt(6); change > 0; change--) {
                file[random.nextInt(file.length)] = (byte) random.nextInt(256);
            }
            Path path = Files.write(folder.resolve("air.csv"), file);
            String layout = random.nextBoolean()
                    ? "{\"day_order\":\"day\",\"humidity_unit\":\"pct\"}"
                    : "{\"day_order\":\"" + random.nextInt() + "\",\"plate_mm\":" + random.nextInt(-5, 5) + "}";
            Typed typed = Typed.with(layout, "moisture", "--logger", path.toString(), "-");
            assertThat(typed.err()).as("seed %d", seed).isEmpty();
            assertThat(typed.exit()).as("seed %d", seed).isIn(0, 2);
        }
    }

    private Typed asked(String file) throws IOException {
        return Typed.with("", "moisture", "--logger", written(file));
    }

    private Typed asked(String file, String layout) throws IOException {
        return Typed.with(layout, "moisture", "--logger", written(file), "-");
    }

    private String written(String file) throws IOException {
        return Files.writeString(folder.resolve("air.csv"), file).toString();
    }
}
