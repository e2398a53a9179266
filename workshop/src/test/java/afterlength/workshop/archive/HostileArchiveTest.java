package afterlength.workshop.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.ledger.FreshShop;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Archives that are spoilt, cut off, forged or from elsewhere: each is refused in words, and nothing of it is kept. */
class HostileArchiveTest {
    private static final String TABLES = "bag/data/tables/";

    @TempDir
    Path root;

    private Path whole;
    private Map<String, byte[]> files;

    @BeforeEach
    void make() throws IOException {
        whole = new SmallShop(root.resolve("shop")).archive(ArchiveWish.wholeShop(), root.resolve("bag.zip"));
        files = Bags.files(whole);
    }

    @AfterEach
    void nothingWasKept() throws IOException {
        try (Stream<Path> all = Files.list(root)) {
            assertThat(all.map(file -> file.getFileName().toString())).containsOnly("shop", "bag.zip", "spoilt.zip");
        }
    }

    private ThrowingCallable reading(Map<String, byte[]> spoilt) throws IOException {
        Path archive = Bags.write(spoilt, root.resolve("spoilt.zip"));
        return () -> ArchiveReader.read(archive, root.resolve("back"), Progress.NOBODY);
    }

    private ThrowingCallable spoilt(Consumer<Map<String, byte[]>> spoiling) throws IOException {
        Map<String, byte[]> copy = new LinkedHashMap<>(files);
        spoiling.accept(copy);
        return reading(copy);
    }

    /** Spoilt, but with all its sums written anew. */
    private ThrowingCallable forged(Consumer<Map<String, byte[]>> forging) throws IOException {
        Map<String, byte[]> copy = new LinkedHashMap<>(files);
        forging.accept(copy);
        return reading(Bags.resealed(copy, "bag"));
    }

    private static void refused(ThrowingCallable reading, String message) {
        assertThatThrownBy(reading).isInstanceOf(ArchiveRefused.class).hasMessage(message);
    }

    @Test
    void aChangedByteIsFound() throws IOException {
        refused(
                spoilt(bag -> bag.put("bag/data/tables/owner.csv", Bags.utf8("id"))),
                "“data/tables/owner.csv” is not what it was when the archive was made: its check sum differs.");
    }

    @Test
    void aMissingFileIsFound() throws IOException {
        refused(
                spoilt(bag -> bag.remove("bag/data/tables/owner.csv")),
                "“data/tables/owner.csv” is missing from the archive.");
    }

    @Test
    void aFilePutInAfterwardsIsFound() throws IOException {
        refused(
                spoilt(bag -> bag.put("bag/data/extra.txt", Bags.utf8("x"))),
                "“data/extra.txt” stands in no list; it was put in afterwards.");
    }

    @Test
    void changedFactsAreFound() throws IOException {
        refused(
                spoilt(bag -> bag.put(
                        "bag/bag-info.txt",
                        Bags.utf8(Bags.text(bag, "bag/bag-info.txt").replace("Afterlength test", "Afterlength best")))),
                "“bag-info.txt” is not what it was when the archive was made: its check sum differs.");
    }

    @Test
    void aCutOffFileIsRefused() throws IOException {
        byte[] bytes = Files.readAllBytes(whole);
        for (int part : List.of(0, 1, 30, bytes.length / 2, bytes.length - 1)) {
            Path cut = Files.write(root.resolve("spoilt.zip"), Arrays.copyOf(bytes, part));
            assertThatThrownBy(() -> ArchiveReader.read(cut, root.resolve("back"), Progress.NOBODY))
                    .as("%d of %d bytes", part, bytes.length)
                    .isInstanceOf(ArchiveRefused.class)
                    .hasMessageEndingWith("It was cut off or damaged on its way; fetch it again.");
        }
    }

    /** Any byte may be hit on the way; the seed is named. A hit that changes nothing of what is read is no damage. */
    @Test
    void damageAnywhereIsRefusedOrHarmless() throws Exception {
        byte[] bytes = Files.readAllBytes(whole);
        Map<String, List<String>> rows = WholeShop.rows(root.resolve("shop"));
        for (long seed = 0; seed < 40; seed++) {
            byte[] damaged = bytes.clone();
            SplittableRandom random = new SplittableRandom(seed);
            damaged[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
            Path archive = Files.write(root.resolve("spoilt.zip"), damaged);
            try {
                ArchiveReader.read(archive, root.resolve("back"), Progress.NOBODY);
                assertThat(WholeShop.rows(root.resolve("back")))
                        .as("seed %d", seed)
                        .isEqualTo(rows);
            } catch (ArchiveRefused refused) {
                assertThat(refused.getMessage()).as("seed %d", seed).isNotBlank();
                assertThat(root.resolve("back")).as("seed %d", seed).doesNotExist();
            }
            ShopCopy.remove(root.resolve("back"));
        }
    }

    @Test
    void namesThatLeadOutAreRefused() throws IOException {
        for (String name :
                List.of("bag/data/../../evil", "/etc/evil", "bag\\evil", "C:/evil", "bag/data/..", "bag/da\tta")) {
            refused(
                    spoilt(bag -> bag.put(name, Bags.utf8("x"))),
                    "The archive holds a file named “" + name.replace("\t", "?")
                            + "”, which would be written outside of the shop. It was not made by this program; do not use it.");
        }
    }

    @Test
    void aForgedArchiveCannotWriteElsewhereEither() throws IOException {
        refused(
                forged(bag -> bag.put("bag/data/photographs/..jpg", Bags.utf8("x"))),
                "“data/photographs/..jpg” is not named by the SHA-256 of its bytes.");
    }

    @Test
    void aBombIsNotUnpacked() throws IOException {
        refused(
                forged(bag -> bag.put("bag/data/tables/owner.csv", new byte[60_000_000])),
                "“bag/data/tables/owner.csv” unpacks to more than 200 times its size. No shop's files do; the archive was made to fill the disk.");
    }

    @Test
    void moreThanIsDeclaredIsNotUnpacked() throws IOException {
        String info = Bags.text(files, "bag/bag-info.txt").replaceFirst("Payload-Oxum: .*", "Payload-Oxum: 10.3");
        refused(
                spoilt(bag -> bag.put("bag/bag-info.txt", Bags.utf8(info))),
                "The archive unpacks to more than the 10 bytes it declares.");
    }

    @Test
    void otherZipsAreNoBags() throws IOException {
        refused(
                reading(Map.of("holiday.jpg", new byte[] {1})),
                "The archive is no bag: all its files have to lie in one folder, and 1 were found. It was not made by this program, or packed anew.");
        refused(
                reading(Map.of("a/holiday.jpg", new byte[] {1})),
                "The archive is no bag: it does not say so in “bagit.txt”.");
    }

    @Test
    void aForeignBagSaysSo() throws IOException {
        refused(
                forged(bag -> bag.put("bag/bag-info.txt", Bags.utf8("Payload-Oxum: 0.0\nBagging-Date: 2026-01-01\n"))),
                "The archive does not say its “Afterlength-Archive-Format”. It was not made by this program.");
    }

    @Test
    void anotherBagVersionIsRefused() throws IOException {
        refused(
                forged(bag -> bag.put(
                        "bag/bagit.txt", Bags.utf8("BagIt-Version: 0.97\nTag-File-Character-Encoding: UTF-8\n"))),
                "“bagit.txt” says “BagIt-Version: 0.97 Tag-File-Character-Encoding: UTF-8”; read are bags of BagIt version 1.0 with names in UTF-8.");
    }

    @Test
    void filesToBeFetchedAreRefused() throws IOException {
        refused(
                forged(bag -> bag.put("bag/fetch.txt", Bags.utf8("http://example.org/ 1 data/x\n"))),
                "The archive leaves files to be fetched from elsewhere (fetch.txt); only whole archives are read.");
    }

    @Test
    void aNewerArchiveNamesBothVersions() throws IOException {
        int newest = FreshShop.newestVersion();
        String info = Bags.text(files, "bag/bag-info.txt")
                .replaceFirst("Database-Version: \\d+", "Database-Version: " + (newest + 1));
        refused(
                forged(bag -> bag.put("bag/bag-info.txt", Bags.utf8(info))),
                "The archive was made by a newer version of this program (format 1, database " + (newest + 1)
                        + "; this one reads format 1, database up to " + newest + "). Read it with that version.");
    }

    @Test
    void rowsThatDoNotFitAreRefused() throws IOException {
        String before = "The archive was changed after it was made, or made elsewhere. ";
        refused(
                forged(bag -> bag.put("bag/data/tables/clamp.csv", Bags.utf8("id,name\r\n"))),
                before + "The rows of “clamp” do not fit: its columns are id, name; this table has id, name, throat_mm,"
                        + " jaw_length_mm, jaw_width_mm, jaw_height_mm, arm_mm, arm_width_mm, put_away.");
        refused(
                forged(bag -> bag.put("bag/data/tables/setting.csv", Bags.utf8("name,value\r\nshop_name,a,b\r\n"))),
                before
                        + "The rows of “setting” do not fit: they are no table: Record 2 has 3 fields, but first record had 2 fields.");
        String owner = Bags.text(files, "bag/data/tables/owner.csv");
        refused(
                forged(bag -> bag.put("bag/data/tables/owner.csv", Bags.utf8(owner.replace("\r\n2,", "\r\ntwo,")))),
                before + "The rows of “owner” do not fit: line 4 has “two” as id, which is no number.");
        refused(
                forged(bag -> bag.put("bag/data/tables/owner.csv", Bags.utf8(owner.replace("\r\n2,", "\r\n7,")))),
                before + "The rows of “instrument” do not fit: one names a row of “owner” that is not there.");
        refused(
                forged(bag -> bag.put("bag/data/tables/nothing.csv", Bags.utf8("a\r\n"))),
                "“data/tables/nothing.csv” is no table of a shop of that version; its rows would be lost.");
    }

    /** As a program of version 6 would have written it: without the tables and columns that came later. */
    @Test
    void anOlderArchiveIsBroughtUpToDate() throws Exception {
        Map<String, byte[]> older = new LinkedHashMap<>(files);
        Map<String, List<String>> then = columnsOfVersion(6);
        for (String name : files.keySet()) {
            if (name.startsWith(TABLES)) {
                List<String> columns = then.get(name.substring(TABLES.length()).replace(".csv", ""));
                if (columns == null) {
                    older.remove(name);
                } else {
                    older.put(name, Bags.utf8(only(columns, Bags.text(files, name))));
                }
            }
        }
        older.put(
                "bag/bag-info.txt",
                Bags.utf8(Bags.text(older, "bag/bag-info.txt")
                        .replaceFirst("Database-Version: \\d+", "Database-Version: 6")));
        Path archive = Bags.write(Bags.resealed(older, "bag"), root.resolve("spoilt.zip"));
        ArchiveReader.read(archive, root.resolve("back"), Progress.NOBODY);
        assertThat(WholeShop.rows(root.resolve("back"))).isEqualTo(WholeShop.rows(root.resolve("shop")));
        ShopCopy.remove(root.resolve("back"));
    }

    private Map<String, List<String>> columnsOfVersion(int version) throws Exception {
        Path folder = Files.createTempDirectory("version");
        Map<String, List<String>> columns = new LinkedHashMap<>();
        try (FreshShop fresh = FreshShop.make(folder.resolve("shop.db"), version);
                var connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("shop.db"));
                var statement = connection.createStatement()) {
            for (String table : fresh.tables()) {
                List<String> names = new ArrayList<>();
                var row = statement.executeQuery("SELECT name FROM pragma_table_info('" + table + "')");
                while (row.next()) {
                    names.add(row.getString(1));
                }
                columns.put(table, names);
            }
        }
        ShopCopy.remove(folder);
        return columns;
    }

    private static String only(List<String> columns, String csv) {
        StringWriter text = new StringWriter();
        CsvWriter out = CsvWriter.builder()
                .bufferSize(0)
                .lineDelimiter(LineDelimiter.CRLF)
                .build(text);
        out.writeRecord(columns);
        CsvReader.builder()
                .ofNamedCsvRecord(csv)
                .forEach(row ->
                        out.writeRecord(columns.stream().map(row::getField).toList()));
        return text.toString();
    }
}
