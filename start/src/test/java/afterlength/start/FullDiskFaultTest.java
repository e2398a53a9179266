package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A disk of sixteen megabytes fills up, and a folder that may not be written: said in words, nothing damaged. Needs the right to mount
 * a small disk in memory, and is skipped, visibly, where that is not given.
 */
class FullDiskFaultTest {
    @TempDir
    Path folder;

    private Path disk = Path.of("");

    @BeforeEach
    void mountASmallDisk() throws IOException, InterruptedException {
        disk = Files.createDirectories(folder.resolve("small-disk"));
        assumeTrue(
                run("mount", "-t", "tmpfs", "-o", "size=16m", "tmpfs", disk.toString()) == 0,
                "no right to mount a small disk here; the full disk is not tried");
    }

    @AfterEach
    void unmount() throws IOException, InterruptedException {
        run("umount", "-l", disk.toString());
    }

    @Test
    void aFullDiskIsSaidInWordsAndDamagesNothing() throws IOException, InterruptedException {
        Path shop = disk.resolve("shop");
        Promises promises = new Promises();
        try (ShopProcess process = ShopProcess.start(shop)) {
            Caller caller = new Caller(process.address());
            caller.post("/receive", Map.of("owner_name", "P", "kind", "VIOLA", "name", "first", "reason", "r"));
            DiskWork.write(caller, promises, "before");
            fill();
            Caller.Answer refused = DiskWork.writeUntilRefused(caller, promises);
            assertThat(refused.status()).as(process.said()).isEqualTo(507);
            assertThat(refused.text())
                    .contains("the disk is full", "Everything saved before is as it was", "Try again");
            assertThat(refused.text()).contains("words that must not be lost");
            assertThat(DiskWork.upload(caller).text()).contains("See whether the disk is full, then bring it again");
            assertThat(caller.post("/shelf/backups", Map.of()).text()).contains("No backup was made");
            assertThat(caller.get("/visits/1/examination").status()).isEqualTo(200);
            Files.delete(disk.resolve("filler"));
            DiskWork.write(caller, promises, "after");
            assertThat(DiskWork.upload(caller).status()).isEqualTo(200);
            process.kill();
        }
        promises.check(shop, "after the full disk");
    }

    @Test
    void aProgramStartedOnAFullOrReadOnlyDiskSaysSoAndEnds() throws IOException, InterruptedException {
        Path shop = disk.resolve("shop");
        try (ShopProcess process = ShopProcess.start(shop)) {
            Caller caller = new Caller(process.address());
            caller.post("/receive", Map.of("owner_name", "P", "kind", "VIOLA", "name", "first", "reason", "r"));
            process.kill();
        }
        run("mount", "-o", "remount,ro", disk.toString());
        try (ShopProcess process = ShopProcess.start(shop)) {
            assertThat(process.exit()).isEqualTo(2);
            assertThat(process.said()).contains("cannot be made or written").doesNotContain("Exception:");
        }
        run("mount", "-o", "remount,rw", disk.toString());
        fill();
        try (ShopProcess process = ShopProcess.start(disk.resolve("second-shop"))) {
            assertThat(process.exit()).isEqualTo(2);
            assertThat(process.said()).startsWith("afterlength: ").doesNotContain("\tat ");
        }
        Files.delete(disk.resolve("filler"));
        new Promises().check(shop, "after a start on a full disk");
    }

    private void fill() throws IOException {
        byte[] some = new byte[4096];
        try (OutputStream filler = Files.newOutputStream(disk.resolve("filler"))) {
            for (int n = 0; n < 10_000; n++) {
                filler.write(some);
            }
        } catch (IOException full) {
            assertThat(full).hasMessageContaining("space");
        }
    }

    private static int run(String... command) throws InterruptedException {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            process.getInputStream().readAllBytes();
            return process.waitFor();
        } catch (IOException noSuchProgram) {
            return -1;
        }
    }
}
