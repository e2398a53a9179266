package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.start.verbs.Verb;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.ShopFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands {@code archive} and {@code read-archive}. */
class ArchiveCommandTest {
    private static final CommandLine COMMAND_LINE = new CommandLine(
            Verb.all(),
            Map.of("archive", new ArchiveCommand(), "read-archive", new ReadArchiveCommand()),
            new OpenShop(),
            Typed.MARCH);

    @TempDir
    Path folder;

    private static Typed type(String... arguments) {
        return Typed.at(COMMAND_LINE, new byte[0], arguments);
    }

    private String path(String name) {
        return folder.resolve(name).toString();
    }

    @Test
    void aShopGoesOutAndComesBack() {
        Ledger.open(ShopFolder.open(folder.resolve("shop")));
        Typed made = type("archive", "--shop", path("shop"), "--to", path("shop.zip"));
        assertThat(made.exit()).isZero();
        assertThat(made.out()).isEmpty();
        assertThat(made.err()).contains("Tables written: ").endsWith("Keep a second copy in another house.\n");
        Typed read = type("read-archive", path("shop.zip"), "--shop", path("back"));
        assertThat(read.exit()).isZero();
        assertThat(read.err())
                .contains("Checked: ")
                .endsWith("The shop is in " + path("back") + ". Open it with ./afterlength --shop " + path("back")
                        + "\n");
        assertThat(folder.resolve("back").resolve("shop.db")).isRegularFile();
    }

    @Test
    void helpTellsEveryOption() {
        assertThat(type("archive", "--help").out())
                .contains("--shop FOLDER", "--to FILE.zip", "--instrument N", "--owner N", "--without-people");
        assertThat(type("read-archive", "--help").out()).contains("read-archive FILE.zip --shop FOLDER");
        assertThat(type("archive", "--help").exit()).isZero();
    }

    @Test
    void whatIsWrongIsToldAtOnce() {
        assertThat(type("archive", "--shop", path("none"), "--instrument", "x", "--owner", "2", "--fast")
                        .problems())
                .containsExactly(
                        ": There is no option \"--fast\". Type --help to see what there is.",
                        ": Name an instrument or an owner, not both.",
                        ": The instrument is \"x\"; give the number in the address of its page, such as 3.",
                        ": There is no shop in the folder " + path("none") + ". Name its folder with --shop FOLDER.");
        assertThat(type("archive", "--shop", path("none"), "--without-people").problems())
                .contains(": --without-people goes with --instrument N; the other archives are about people.");
        assertThat(folder.resolve("none")).doesNotExist();
    }

    @Test
    void anInstrumentThatIsNotThereIsNoEmptyArchive() {
        Ledger.open(ShopFolder.open(folder.resolve("shop")));
        assertThat(type("archive", "--shop", path("shop"), "--instrument", "7", "--to", path("a.zip"))
                        .problems())
                .containsExactly(
                        ": The archive cannot be written: There is no instrument 7 in this shop."
                                + " Nothing was changed; see whether the disk has room, or name another place with --to FILE.zip.");
        assertThat(folder.resolve("a.zip")).doesNotExist();
    }

    @Test
    void aPlaceThatIsNotThereIsNamed() {
        Ledger.open(ShopFolder.open(folder.resolve("shop")));
        assertThat(type("archive", "--shop", path("shop"), "--to", path("none/a.zip"))
                        .problems())
                .containsExactly(": There is no folder for \"" + path("none/a.zip")
                        + "\". Make it first, or name another place with --to FILE.zip.");
    }

    @Test
    void whatIsNoArchiveIsRefusedAndNothingIsLeft() throws IOException {
        Files.writeString(folder.resolve("letter.zip"), "Dear archive");
        assertThat(type("read-archive", path("letter.zip"), "--shop", path("back"))
                        .problems())
                .singleElement()
                .asString()
                .startsWith(": The file is no whole ZIP (")
                .endsWith("Nothing was kept of it.");
        assertThat(type("read-archive", path("none.zip"), "--shop", path("back"))
                        .problems())
                .containsExactly(": The file \"" + path("none.zip") + "\" is not there. Check its name.");
        assertThat(type("read-archive").problems())
                .containsExactly(": Name the archive first: ./afterlength read-archive FILE.zip --shop FOLDER.");
        assertThat(type("read-archive", path("letter.zip")).problems())
                .containsExactly(": Name the folder of the new shop: --shop FOLDER.");
        assertThat(folder.resolve("back")).doesNotExist();
    }
}
