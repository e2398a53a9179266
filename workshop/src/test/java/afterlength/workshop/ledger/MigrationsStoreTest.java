package afterlength.workshop.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop is made, opened again, and refused with a reason when it is not ours or too new. */
class MigrationsStoreTest {
    @TempDir
    Path folder;

    @Test
    void theNewestVersionIsTheNewestFile() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/afterlength/workshop/ledger/migrations"))) {
            List<Integer> versions = files.map(file -> file.getFileName().toString())
                    .map(name -> Integer.valueOf(name.substring(1, name.indexOf("__"))))
                    .sorted()
                    .toList();
            assertThat(versions.get(versions.size() - 1)).isEqualTo(Migrations.NEWEST);
        }
    }

    @Test
    void whatWasKeptIsThereWhenTheShopIsOpenedAgain() {
        new SettingsStore(Ledger.open(ShopFolder.open(folder))).put(Settings.FRESH);
        assertThat(new SettingsStore(Ledger.open(ShopFolder.open(folder))).get())
                .isEqualTo(Settings.FRESH);
    }

    @Test
    void aShopOfANewerProgramIsLeftAlone() {
        ShopFolder shop = ShopFolder.open(folder);
        Ledger.open(shop).change(handle -> handle.execute("PRAGMA user_version = 99"));
        assertThatThrownBy(() -> Ledger.open(shop))
                .isInstanceOf(ShopUnusable.class)
                .hasMessage("The shop in " + folder
                        + " was last used by a newer version of this program (its database is version 99, "
                        + "this program knows up to " + Migrations.NEWEST
                        + "). Use the newer version; nothing was changed.");
    }

    @Test
    void aFileThatIsNoDatabaseIsRefusedAndKept() throws IOException {
        ShopFolder shop = ShopFolder.open(folder);
        Files.writeString(
                shop.database(),
                "this is a letter to my aunt, not a database, and it is long enough to be looked at ".repeat(20));
        byte[] before = Files.readAllBytes(shop.database());
        assertThatThrownBy(() -> Ledger.open(shop))
                .isInstanceOf(ShopUnusable.class)
                .hasMessageStartingWith("The database " + shop.database() + " cannot be opened (")
                .hasMessageEndingWith(
                        "If it is damaged, put a copy from " + shop.backups() + " in its place; nothing was changed.");
        assertThat(Files.readAllBytes(shop.database())).isEqualTo(before);
    }
}
