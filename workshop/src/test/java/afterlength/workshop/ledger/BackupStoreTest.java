package afterlength.workshop.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A backup is whole, tried, found again, refused when it was damaged, and takes no living shop's place unasked. */
class BackupStoreTest {
    private static final Instant NOON = Instant.parse("2026-11-28T12:00:00Z");

    @TempDir
    Path folder;

    private ShopFolder shop;
    private Ledger ledger;
    private String picture = "";

    @BeforeEach
    void aShopWithAPicture() throws IOException {
        shop = ShopFolder.open(folder.resolve("shop"));
        ledger = Ledger.open(shop);
        picture = new Photographs(shop).keep(bytes("a picture, as far as this test is concerned"));
        OldShops.rows()
                .forEach(row -> ledger.change(handle -> handle.execute(row.replace("'x'", "'" + picture + "'"))));
    }

    @Test
    void aBackupIsTriedAndFoundWhole() throws IOException {
        Backup backup = new Backups(shop).make(BackupKind.DAILY, NOON);
        assertThat(BackupTrial.run(backup, BackupTrial.Extent.ALL).faults()).isEmpty();
        assertThat(backup.sound()).isTrue();
        assertThat(backup.trial().get(0)).isEqualTo("restored for trial and found whole, 1 of 1 files read through");
        assertThat(backup.sheet().rows()).containsEntry("finding", 1L).containsEntry("photograph", 1L);
        assertThat(new Backups(shop).list()).containsExactly(backup);
        assertThat(left(shop.backups())).containsExactly("daily-20261128-120000");
    }

    @Test
    void aBackupElsewhereIsAShopAgain() throws IOException {
        Path place = folder.resolve("other-disk");
        Backup backup = new Backups(shop).makeIn(place, BackupKind.BY_HAND, NOON);
        ShopFolder fresh = ShopFolder.open(folder.resolve("fresh"));
        Restore.Done done = new Restore(backup, fresh).run(NOON);
        assertThat(done.aside()).isEmpty();
        assertThat(done.missing()).isEmpty();
        assertThat(count(Ledger.open(fresh), "finding")).isEqualTo(1);
        assertThat(Files.readString(fresh.photographs().resolve(picture))).startsWith("a picture");
    }

    @Test
    void theSecondBackupElsewhereCopiesNoPictureAgain() throws IOException {
        Path place = folder.resolve("other-disk");
        new Backups(shop).makeIn(place, BackupKind.BY_HAND, NOON);
        Path copy = place.resolve("photographs").resolve(picture);
        var written = Files.getLastModifiedTime(copy);
        new Backups(shop).makeIn(place, BackupKind.BY_HAND, NOON.plusSeconds(9));
        assertThat(Files.getLastModifiedTime(copy)).isEqualTo(written);
        assertThat(Backups.listIn(place.resolve("backups"))).hasSize(2);
    }

    @Test
    void aPlaceInsideTheShopIsRefused() {
        assertThatThrownBy(() -> new Backups(shop).makeIn(shop.root().resolve("copy"), BackupKind.BY_HAND, NOON))
                .hasMessageContaining("inside the shop's own folder");
    }

    @Test
    void whatWasWrittenSinceIsPutAsideAndNotLost() throws IOException {
        Backup backup = new Backups(shop).make(BackupKind.BY_HAND, NOON);
        ledger.change(handle -> handle.execute("INSERT INTO setting VALUES ('since', 'the backup')"));
        Path aside = new Restore(backup, shop).run(NOON).aside().orElseThrow();
        assertThat(settings(Ledger.open(shop))).doesNotContain("since");
        assertThat(settings(Ledger.open(new ShopFolder(aside)))).contains("since");
    }

    @Test
    void aChangedByteInTheDatabaseIsFound() throws IOException {
        Backup backup = new Backups(shop).make(BackupKind.DAILY, NOON);
        byte[] bytes = Files.readAllBytes(backup.database());
        bytes[bytes.length / 2] ^= 0x55;
        Files.write(backup.database(), bytes);
        assertThat(BackupTrial.run(backup, BackupTrial.Extent.ALL).ofDatabase())
                .anyMatch(fault -> fault.contains("fingerprint differs"));
        assertThat(backup.sound()).isFalse();
        assertThatThrownBy(() -> new Restore(backup, shop).run(NOON)).hasMessageContaining("the backup is not whole");
        assertThat(count(ledger, "finding")).isEqualTo(1);
    }

    @Test
    void aChangedOrLostPictureIsFoundAndKeepsTheDatabaseFromNobody() throws IOException {
        Backup backup = new Backups(shop).make(BackupKind.DAILY, NOON);
        Path file = shop.photographs().resolve(picture);
        Files.writeString(
                file, "another picture, as far as this test is concern", StandardOpenOption.TRUNCATE_EXISTING);
        Files.writeString(file, "b picture, as far as this test is concerned", StandardOpenOption.TRUNCATE_EXISTING);
        assertThat(BackupTrial.run(backup, BackupTrial.Extent.ALL).faults())
                .containsExactly("the file photographs/" + picture
                        + " is no longer what its name says: it was altered or the disk is failing");
        Files.delete(file);
        assertThat(BackupTrial.run(backup, BackupTrial.Extent.ALL).ofFiles())
                .containsExactly("the file photographs/" + picture + " is not there");
        assertThat(new Restore(backup, shop).run(NOON).missing()).hasSize(1);
        assertThat(count(Ledger.open(shop), "finding")).isEqualTo(1);
    }

    @Test
    void aBackupThatBrokeOffIsPassedOverAndClearedAway() throws IOException {
        Path half = Files.createDirectories(shop.backups().resolve(".unfinished-1"));
        Files.writeString(half.resolve("shop.db"), "half");
        Files.setLastModifiedTime(half, FileTime.from(Instant.now().minus(Duration.ofHours(7))));
        Path underWay = Files.createDirectories(shop.backups().resolve(".unfinished-2"));
        Path cut = Files.createDirectories(shop.backups().resolve("daily-20260101-000000"));
        Files.writeString(cut.resolve(BackupSheet.NAME), "A backup of a shop kept by Afterlength\nmade 2026-");
        Backup backup = new Backups(shop).make(BackupKind.DAILY, NOON);
        assertThat(new Backups(shop).list()).containsExactly(backup);
        assertThat(half).doesNotExist();
        assertThat(underWay).exists();
    }

    @Test
    void eachDayHasOneAndOldOnesGiveWay() throws IOException {
        Backups backups = new Backups(shop);
        backups.make(BackupKind.BY_HAND, NOON.minus(Duration.ofDays(500)));
        for (int hour = 0; hour < 24 * 60; hour += 8) {
            DailyBackup.look(backups, NOON.plus(Duration.ofHours(hour)));
        }
        List<Instant> kept =
                backups.list().stream().map(backup -> backup.sheet().madeAt()).toList();
        assertThat(kept).hasSizeBetween(14 + 2, 14 + 5).contains(NOON, NOON.minus(Duration.ofDays(500)));
        assertThat(kept.get(0)).isEqualTo(NOON.plus(Duration.ofDays(59)));
    }

    @Test
    void aBackupMadeWhileOthersWriteIsOfOneMoment() throws Exception {
        Thread writer = new Thread(() -> {
            for (int n = 0; n < 300; n++) {
                String name = "n" + n;
                ledger.change(handle -> handle.execute("INSERT INTO setting VALUES (?, 'v')", name));
            }
        });
        writer.start();
        for (int n = 0; n < 5; n++) {
            Backup backup = new Backups(shop).make(BackupKind.BY_HAND, NOON);
            assertThat(BackupTrial.run(backup, BackupTrial.Extent.ALL).faults()).isEmpty();
        }
        writer.join();
    }

    private static ByteArrayInputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> left(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    private static int count(Ledger ledger, String table) {
        return ledger.read(handle -> handle.createQuery("SELECT count(*) FROM " + table)
                .mapTo(Integer.class)
                .one());
    }

    private static List<String> settings(Ledger ledger) {
        return ledger.read(handle -> handle.createQuery("SELECT name FROM setting")
                .mapTo(String.class)
                .list());
    }
}
