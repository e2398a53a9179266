package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.verbs.Verb;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.ledger.ShopLock;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code backup} and {@code restore} as they are typed. */
class BackupCommandTest {
    @TempDir
    Path folder;

    private Path shop = Path.of("");

    @BeforeEach
    void aShop() {
        shop = folder.resolve("shop");
        new SettingsStore(Ledger.open(ShopFolder.open(shop))).put(Settings.FRESH);
    }

    @Test
    void aBackupElsewhereComesBackInAnEmptyFolder() {
        String copy = made(type(
                "backup",
                "--shop",
                shop.toString(),
                "--to",
                folder.resolve("disk").toString()));
        Path fresh = folder.resolve("fresh");
        assertThat(type("restore", "--from", copy, "--shop", fresh.toString()).exit())
                .isZero();
        assertThat(new SettingsStore(Ledger.open(ShopFolder.open(fresh))).get()).isEqualTo(Settings.FRESH);
    }

    @Test
    void aLivingShopIsNotReplacedWithoutBeingToldSo() {
        String copy = made(type("backup", "--shop", shop.toString()));
        Typed refused = type("restore", "--from", copy, "--shop", shop.toString());
        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.problems().get(0)).contains("A shop lives in", "--put-living-shop-aside");
        Typed done = type("restore", "--from", copy, "--shop", shop.toString(), "--put-living-shop-aside");
        assertThat(done.exit()).as(done.out()).isZero();
        assertThat(Path.of(done.json().get("former_database").asString(), "shop.db"))
                .exists();
    }

    @Test
    void anOpenShopIsNotReplacedAtAll() {
        String copy = made(type("backup", "--shop", shop.toString()));
        try (ShopLock lock = ShopLock.take(new ShopFolder(shop)).orElseThrow()) {
            assertThat(lock).isNotNull();
            Typed refused = type("restore", "--from", copy, "--shop", shop.toString(), "--put-living-shop-aside");
            assertThat(refused.problems().get(0)).contains("is open. End the program");
            assertThat(type("--shop", shop.toString(), "--no-browser", "--port", "0")
                            .err())
                    .contains("is open already");
        }
    }

    @Test
    void whatIsNoShopOrNoBackupIsRefusedInWords() throws IOException {
        Path empty = Files.createDirectories(folder.resolve("empty"));
        assertThat(type("backup", "--shop", empty.toString()).problems().get(0)).contains("There is no shop in");
        assertThat(type("restore", "--from", empty.toString()).exit()).isEqualTo(2);
        assertThat(type("restore").problems().get(0)).contains("Name its folder with --from");
        assertThat(type(
                                "backup",
                                "--shop",
                                shop.toString(),
                                "--to",
                                shop.resolve("in").toString())
                        .problems()
                        .get(0))
                .contains("inside the shop's own folder");
    }

    @Test
    void aPortThatIsTakenIsSaidAndNotCalledOurFault() throws IOException {
        try (ServerSocket other = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            String port = Integer.toString(other.getLocalPort());
            Typed typed = type("--shop", shop.toString(), "--no-browser", "--port", port);
            assertThat(typed.exit()).isEqualTo(2);
            assertThat(typed.err()).contains("The port " + port + " is taken");
        }
    }

    private static String made(Typed typed) {
        assertThat(typed.exit()).as(typed.out()).isZero();
        return typed.json().get("backup").asString();
    }

    private static Typed type(String... arguments) {
        Map<String, Command> commands = new LinkedHashMap<>();
        commands.put(BackupCommand.NAME, new BackupCommand(Typed.MARCH));
        commands.put(RestoreCommand.NAME, new RestoreCommand(Typed.MARCH));
        return Typed.at(new CommandLine(Verb.all(), commands, new OpenShop(), Typed.MARCH), new byte[0], arguments);
    }
}
