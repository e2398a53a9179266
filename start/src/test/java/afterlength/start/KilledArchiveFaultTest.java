package afterlength.start;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.archive.ArchiveReader;
import afterlength.workshop.archive.ArchiveWish;
import afterlength.workshop.archive.Progress;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.Listing;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.ShopFolder;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A process that is killed while it makes or reads an archive leaves neither half an archive nor half a shop. */
class KilledArchiveFaultTest {
    @TempDir
    Path root;

    private Path shop;

    @BeforeEach
    void receive() {
        shop = root.resolve("shop");
        House house = House.of(ShopFolder.open(shop), Typed.MARCH);
        house.visits.receive(new Arrival(
                new Owner(0, "A person (invented)", "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.VIOLA, "Viola", "", "", "", "", null, "", "", null, 1),
                new Visit(0, 0, "", LocalDate.of(2026, 3, 2), "", "To play", "", "", "", null, null, 1)));
    }

    @Test
    void killedWhileMakingThereIsNoArchiveAndTheShopIsWhole() throws Exception {
        Path archive = root.resolve("shop.zip");
        killedAt("Instruments written", "archive", "--shop", shop.toString(), "--to", archive.toString());
        assertThat(archive).doesNotExist();
        House again = House.of(ShopFolder.open(shop), Typed.MARCH);
        again.archiveMaker().write(ArchiveWish.wholeShop(), archive, Progress.NOBODY);
        ArchiveReader.read(archive, root.resolve("back"), Progress.NOBODY);
        assertThat(names(root.resolve("back"))).containsExactly("Viola");
    }

    @Test
    void killedWhileReadingThereIsTheWholeShopOrNone() throws Exception {
        Path archive = root.resolve("shop.zip");
        House.of(ShopFolder.open(shop), Typed.MARCH)
                .archiveMaker()
                .write(ArchiveWish.wholeShop(), archive, Progress.NOBODY);
        for (String moment : List.of("Checked", "Tables read")) {
            Path back = root.resolve("back after " + moment);
            killedAt(moment, "read-archive", archive.toString(), "--shop", back.toString());
            if (!Files.exists(back)) {
                ArchiveReader.read(archive, back, Progress.NOBODY);
            }
            assertThat(names(back)).as("killed at “%s”", moment).containsExactly("Viola");
        }
    }

    private static List<String> names(Path shop) {
        return House.of(ShopFolder.open(shop), Typed.MARCH).instruments.find("").stream()
                .map(Listing::name)
                .toList();
    }

    /** Ends the program by force as soon as it says that it has come so far. */
    private static void killedAt(String moment, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "afterlength.start.Main"));
        command.addAll(Arrays.asList(arguments));
        Process program = new ProcessBuilder(command).redirectErrorStream(true).start();
        try (BufferedReader said = program.inputReader(UTF_8)) {
            String line = said.readLine();
            while (line != null && !line.strip().startsWith(moment)) {
                line = said.readLine();
            }
            assertThat(line).as("the program says “%s”", moment).isNotNull();
        } finally {
            program.destroyForcibly().waitFor();
        }
    }
}
