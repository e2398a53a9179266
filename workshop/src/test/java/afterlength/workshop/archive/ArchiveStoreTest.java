package afterlength.workshop.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.ShopFolder;
import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.GpsDirectory;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A shop goes into an archive and comes back. */
class ArchiveStoreTest {
    @TempDir
    Path root;

    private SmallShop shop;

    @BeforeEach
    void open() throws IOException {
        shop = new SmallShop(root.resolve("shop"));
    }

    @Test
    void theSameShopComesBackTwice() throws Exception {
        Path first = shop.archive(ArchiveWish.wholeShop(), root.resolve("first.zip"));
        Path back = root.resolve("back");
        ArchiveReader.read(first, back, Progress.NOBODY);
        assertThat(WholeShop.rows(back)).isEqualTo(WholeShop.rows(root.resolve("shop")));
        assertThat(WholeShop.files(back))
                .isEqualTo(WholeShop.files(root.resolve("shop")))
                .hasSize(2);
        ShopFolder folder = ShopFolder.open(back);
        ShopAtHand again = SmallShop.atHand(folder, Ledger.open(folder));
        Path second = root.resolve("second.zip");
        new ArchiveMaker(again, copy -> SmallShop.atHand(copy, Ledger.open(copy)), SmallShop.CLOCK, "Afterlength test")
                .write(ArchiveWish.wholeShop(), second, Progress.NOBODY);
        ArchiveReader.read(second, root.resolve("twice"), Progress.NOBODY);
        assertThat(WholeShop.rows(root.resolve("twice"))).isEqualTo(WholeShop.rows(root.resolve("shop")));
        assertThat(Bags.manifest(second)).isEqualTo(Bags.manifest(first));
    }

    @Test
    void wordsThatASpreadsheetWouldCarryOutAreGuardedAndComeBack() throws Exception {
        shop.ledger.change(handle -> handle.createUpdate(
                        "UPDATE owner SET remark = :formula, address = :quoted, phone = :backslash WHERE id = 1")
                .bind("formula", "=HYPERLINK(1)")
                .bind("quoted", "'-5")
                .bind("backslash", "\\N")
                .execute());
        Path archive = shop.archive(ArchiveWish.wholeShop(), root.resolve("a.zip"));
        assertThat(text(Bags.files(archive))).contains(",'=HYPERLINK").doesNotContain(",=HYPERLINK");
        ArchiveReader.read(archive, root.resolve("back"), Progress.NOBODY);
        assertThat(WholeShop.rows(root.resolve("back"))).isEqualTo(WholeShop.rows(root.resolve("shop")));
    }

    @Test
    void historyIsStillKeptInTheShopThatCameBack() throws Exception {
        Path back = root.resolve("back");
        ArchiveReader.read(shop.archive(ArchiveWish.wholeShop(), root.resolve("a.zip")), back, Progress.NOBODY);
        Ledger ledger = Ledger.open(ShopFolder.open(back));
        assertThatThrownBy(() -> ledger.change(handle -> handle.execute("DELETE FROM finding")))
                .hasMessageContaining("history is kept: finding");
    }

    @Test
    void anInstrumentGoesOutWithItsOwnerAndNobodyElse() throws Exception {
        Path archive =
                shop.archive(ArchiveWish.instrument(shop.viola.instrumentId(), false), root.resolve("viola.zip"));
        Map<String, byte[]> files = Bags.files(archive);
        assertThat(text(files))
                .contains("Clementine")
                .doesNotContain("Quirrenbach")
                .doesNotContain("Cello");
        Path back = root.resolve("back");
        ArchiveReader.read(archive, back, Progress.NOBODY);
        Map<String, List<String>> rows = WholeShop.rows(back);
        Map<String, List<String>> before = WholeShop.rows(root.resolve("shop"));
        for (String table : List.of("owner", "instrument", "visit", "measure", "finding")) {
            List<String> out = rows.getOrDefault(table, List.of());
            assertThat(out).as(table).isNotEmpty();
            assertThat(before.get(table)).as(table).containsAll(out).hasSize(2 * out.size());
        }
    }

    @Test
    void noPlaceGoesOutWithAPicture() throws Exception {
        Map<String, byte[]> whole = Bags.files(shop.archive(ArchiveWish.wholeShop(), root.resolve("all.zip")));
        Map<String, byte[]> out = Bags.files(
                shop.archive(ArchiveWish.instrument(shop.viola.instrumentId(), false), root.resolve("viola.zip")));
        assertThat(places(whole)).isEqualTo(2);
        assertThat(places(out)).isZero();
        assertThat(out.keySet())
                .filteredOn(path -> path.contains("/photographs/"))
                .hasSize(1);
    }

    private static long places(Map<String, byte[]> files) throws Exception {
        long places = 0;
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().endsWith(".jpg")) {
                places += ImageMetadataReader.readMetadata(new ByteArrayInputStream(file.getValue()))
                        .getDirectoriesOfType(GpsDirectory.class)
                        .size();
            }
        }
        return places;
    }

    /** Both readings of the corrected measure, for a spreadsheet. */
    @Test
    void measuresStandInATableWithWhatWasCorrected() throws Exception {
        Map<String, byte[]> files = Bags.files(shop.archive(ArchiveWish.wholeShop(), root.resolve("all.zip")));
        String before = shop.viola.number() + ",before work,body length,";
        String after = ",0.1,mm,tape,20,45,2026-03-02T09:15:00Z,M,";
        assertThat(Bags.text(files, "all/data/instruments/1/measures.csv")
                        .lines()
                        .skip(1))
                .containsExactly(
                        before + "405" + after + "\"no, corrected or withdrawn later\"",
                        before + Math.nextUp(405.5) + after + "yes");
    }

    @Test
    void aPersonGetsEverythingThatIsKeptOfThem() throws Exception {
        String all = text(Bags.files(shop.archive(ArchiveWish.owner(2), root.resolve("owner.zip"))));
        assertThat(all)
                .contains("balthasar.quirrenbach@example.org")
                .contains("as Balthasar Quirrenbach said")
                .doesNotContain("Clementine");
    }

    @Test
    void nothingLiesAboutAfterwards() throws Exception {
        shop.archive(ArchiveWish.wholeShop(), root.resolve("a.zip"));
        assertThat(names(root.resolve("shop"))).noneMatch(name -> name.startsWith("archive"));
        assertThat(names(root)).containsExactlyInAnyOrder("a.zip", "shop");
    }

    @Test
    void aFolderThatHoldsSomethingIsNotFilled() throws Exception {
        Path archive = shop.archive(ArchiveWish.wholeShop(), root.resolve("a.zip"));
        Path place = root.resolve("shop");
        assertThatThrownBy(() -> ArchiveReader.read(archive, place, Progress.NOBODY))
                .isInstanceOf(ArchiveRefused.class)
                .hasMessage(
                        "The folder " + place
                                + " is not empty. An archive is read into an empty folder only, so that nothing is mixed; name another.");
    }

    /** A work that is stopped half-way leaves neither half an archive nor half a shop. */
    @Test
    void stoppingLeavesNothingHalf() throws Exception {
        Progress stopping = (what, done, all) -> {
            throw new IllegalStateException("stopped");
        };
        assertThatThrownBy(() -> shop.maker().write(ArchiveWish.wholeShop(), root.resolve("a.zip"), stopping))
                .hasMessage("stopped");
        Path archive = shop.archive(ArchiveWish.wholeShop(), root.resolve("b.zip"));
        assertThatThrownBy(() -> ArchiveReader.read(archive, root.resolve("back"), stopping))
                .hasMessage("stopped");
        assertThat(names(root)).containsExactlyInAnyOrder("b.zip", "shop");
        assertThat(names(root.resolve("shop"))).noneMatch(name -> name.startsWith("archive"));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    private static String text(Map<String, byte[]> files) {
        StringBuilder text = new StringBuilder();
        files.forEach(
                (path, bytes) -> text.append(path).append('\n').append(new String(bytes, StandardCharsets.UTF_8)));
        return text.toString();
    }
}
