package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few of the crashes that {@link CrashRuns} makes by the hundred; figures of the long run stand in docs/reliability.md. */
class CrashFaultTest {
    private static final int RUNS = 12;

    @TempDir
    Path folder;

    @Test
    void everythingAnsweredForSurvivesTheKill() throws IOException, InterruptedException {
        CrashRuns crashes = new CrashRuns(folder);
        crashes.run(1, RUNS);
        assertThat(crashes.acknowledged()).isPositive();
    }
}
