package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The real process under a limit of the system for the size of its files: in the middle of a write the disk takes no more. Unlike
 * {@link FullDiskFaultTest} it needs no special right, only the program {@code prlimit}.
 */
class FileLimitFaultTest {
    private static final long LONGEST_FILE_BYTES = 1_500_000;

    @TempDir
    Path folder;

    @Test
    void whereFilesMayNotGrowNothingIsDamagedAndTheShopOpensAgain() throws IOException, InterruptedException {
        Path shop = folder.resolve("shop");
        Promises promises = new Promises();
        try (ShopProcess process = ShopProcess.start(shop)) {
            Caller caller = new Caller(process.address());
            caller.post("/receive", Map.of("owner_name", "P", "kind", "VIOLA", "name", "first", "reason", "r"));
            assumeTrue(limit(process), "no prlimit here that could set the limit; it is not tried");
            workUntilRefused(caller, promises, process);
            process.kill();
        }
        promises.check(shop, "after the limit");
        try (ShopProcess process = ShopProcess.start(shop)) {
            Caller caller = new Caller(process.address());
            DiskWork.write(caller, promises, "after the limit was lifted");
            assertThat(DiskWork.upload(caller).status()).isEqualTo(200);
            process.kill();
        }
        promises.check(shop, "after the limit was lifted");
    }

    private static void workUntilRefused(Caller caller, Promises promises, ShopProcess process) throws IOException {
        DiskWork.write(caller, promises, "before");
        Caller.Answer picture = caller.upload(
                "/visits/1/photographs", List.of(Map.entry("moment", "BEFORE")), "files", "n.jpg", tooLarge());
        assertThat(picture.text()).contains("See whether the disk is full, then bring it again");
        Caller.Answer refused = DiskWork.writeUntilRefused(caller, promises);
        assertThat(refused.status()).as(process.said()).isEqualTo(507);
        assertThat(refused.text())
                .contains("the disk is full, may not be written or is failing", "Everything saved before is as it was")
                .contains("words that must not be lost", "Try again");
        assertThat(caller.get("/visits/1/examination").status()).isEqualTo(200);
    }

    private static boolean limit(ShopProcess process) throws InterruptedException {
        try {
            return new ProcessBuilder("prlimit", "--pid=" + process.pid(), "--fsize=" + LONGEST_FILE_BYTES)
                            .inheritIO()
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException noSuchProgram) {
            return false;
        }
    }

    private static byte[] tooLarge() throws IOException {
        byte[] jpeg = NoisyPicture.of(2200, 1800, new SplittableRandom(8));
        assertThat(jpeg).hasSizeGreaterThan(Math.toIntExact(LONGEST_FILE_BYTES));
        return jpeg;
    }
}
