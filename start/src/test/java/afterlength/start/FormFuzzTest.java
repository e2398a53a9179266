package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is sent into a form, it is answered or refused in words; figures of long runs stand in docs/reliability.md. */
class FormFuzzTest {
    @TempDir
    Path folder;

    @Test
    void noFormEverShowsAFaultOfOurOwn() throws IOException {
        FormFuzz fuzz = new FormFuzz(folder);
        fuzz.run(40, "", 1);
        assertThat(fuzz.tally().faults()).isEmpty();
        assertThat(fuzz.tally().kinds().size()).isGreaterThan(40);
    }
}
