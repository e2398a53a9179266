package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Work on a shop whose disk takes no more at some moment. */
final class DiskWork {
    private DiskWork() {}

    static void write(Caller caller, Promises promises, String words) throws IOException {
        assertThat(finding(caller, words).status()).isEqualTo(302);
        promises.row("SELECT count(*) FROM finding_now WHERE observation = ?", words);
    }

    /** The log of changes has room for a few more. */
    static Caller.Answer writeUntilRefused(Caller caller, Promises promises) throws IOException {
        for (int n = 0; n < 1500; n++) {
            String words = "words that must not be lost " + n + " " + "x".repeat(2500);
            Caller.Answer answer = finding(caller, words);
            if (answer.status() != 302) {
                return answer;
            }
            promises.row("SELECT count(*) FROM finding_now WHERE observation = ?", words);
        }
        throw new AssertionError("the disk never refused");
    }

    private static Caller.Answer finding(Caller caller, String words) throws IOException {
        return caller.post(
                "/visits/1/examination",
                Map.of(
                        "part",
                        "top",
                        "kind",
                        "crack",
                        "observation",
                        words,
                        "hand",
                        "H",
                        "age",
                        "OLD",
                        "hinders_playing",
                        "NO",
                        "gets_worse",
                        "NO",
                        "size_reason",
                        "not measured yet"));
    }

    static Caller.Answer upload(Caller caller) throws IOException {
        byte[] jpeg = NoisyPicture.of(600, 600, new SplittableRandom(4));
        return caller.upload("/visits/1/photographs", List.of(Map.entry("moment", "BEFORE")), "files", "n.jpg", jpeg);
    }
}
