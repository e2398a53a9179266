package afterlength.workshop.privacy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import afterlength.workshop.archive.SmallShop;
import afterlength.workshop.archive.WholeShop;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.PersonWords;
import com.drew.imaging.ImageMetadataReader;
import com.drew.metadata.exif.GpsDirectory;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Erasing a person, judged by the bytes of every file in the shop's folder. */
class ErasingStoreTest {
    private static final List<String> TRACES =
            List.of("clementine", "vantongeren", "7700 900123", "447700900123", "larkrise");

    @TempDir
    Path root;

    private SmallShop shop;
    private Eraser eraser;

    @BeforeEach
    void open() throws IOException {
        shop = new SmallShop(root);
        eraser = new Eraser(shop.folder, shop.ledger);
        note("Clementine held the lamp; CLEMENTINE’s case smells of smoke.");
        note("Vantongerens Stachel ist neu.");
        bill("C. V., at the larkrise");
        shop.ledger.copyTo(root.resolve("backups").resolve("before-version-10.db"));
    }

    private void note(String remark) {
        shop.ledger.change(handle -> handle.createUpdate("""
                        INSERT INTO diary_entry (visit_id, what, at, hand, material, remark, written_at)
                        VALUES (:visit, 'NOTE', '2026-03-02T09:15:00Z', 'M', '', :remark, '2026-03-02T09:15:00Z')
                        """)
                .bind("visit", shop.cello.id())
                .bind("remark", remark)
                .execute());
    }

    private void bill(String buyer) {
        shop.ledger.change(handle -> handle.createUpdate("""
                        INSERT INTO invoice (visit_id, year, serial, issued_on, supplied_on, seller, seller_tax_id, buyer, subject,
                          currency, rounding, net_minor, tax_minor, total_minor, paid_minor, terms, no_tax_reason, remark, written_at, hand)
                        VALUES (:visit, 2026, 1, '2026-03-02', '2026-03-02', '', '', :buyer, '', 'EUR', 'PER_LINE', 100, 20, 120, 0, '',
                          '', '', '2026-03-02T09:15:00Z', 'M')
                        """)
                .bind("visit", shop.viola.id())
                .bind("buyer", buyer)
                .execute());
    }

    private List<String> offered() {
        return PersonWords.of(new OwnerStore(shop.ledger).get(1));
    }

    private Erased erase(boolean backupsToo) {
        return eraser.erase(1, offered(), backupsToo, "M. Muster", SmallShop.NOW);
    }

    /** Files that hold a trace, and which. */
    private Map<String, List<String>> traces() throws IOException {
        Map<String, List<String>> traces = new TreeMap<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String bytes =
                        new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).toLowerCase(Locale.ROOT);
                List<String> found = TRACES.stream().filter(bytes::contains).toList();
                if (!found.isEmpty()) {
                    traces.put(root.relativize(file).toString().replaceFirst("[0-9a-f]{64}", "…"), found);
                }
            }
        }
        return traces;
    }

    @Test
    void noFileHoldsATraceAfterwards() throws IOException {
        assertThat(traces().keySet())
                .contains("backups/before-version-10.db", "photographs/…")
                .anyMatch(name -> name.startsWith("shop.db"));
        Erased erased = erase(true);
        assertThat(traces()).isEmpty();
        assertThat(erased.backups()).isEmpty();
        assertThat(erased.texts()).isGreaterThanOrEqualTo(4);
        assertThat(erased.pictures()).isEqualTo(1);
    }

    /** A killed program may have left half a picture, or a copy for an archive. */
    @Test
    void leftoversGoToo() throws IOException {
        Files.writeString(root.resolve("photographs").resolve("incoming-1.part"), "Clementine");
        Path copy = Files.createDirectories(root.resolve("archive-making-7").resolve("shop"));
        Files.copy(root.resolve("shop.db"), copy.resolve("shop.db"));
        erase(true);
        assertThat(traces()).isEmpty();
        assertThat(root.resolve("archive-making-7")).doesNotExist();
    }

    @Test
    void backupsThatAreKeptAreNamed() throws IOException {
        Erased erased = erase(false);
        assertThat(erased.backups()).containsExactly("before-version-10.db");
        assertThat(traces().keySet()).containsExactly("backups/before-version-10.db");
    }

    @Test
    void whatIsTechnicalStays() throws Exception {
        Map<String, List<String>> before = WholeShop.rows(root);
        erase(true);
        Map<String, List<String>> after = WholeShop.rows(root);
        for (String table : List.of("instrument", "finding", "measure", "treatment", "step", "mark", "setup")) {
            assertThat(after.get(table)).as(table).isEqualTo(before.get(table));
        }
        assertThat(after.getOrDefault("diary_entry", List.of()))
                .hasSize(2)
                .anyMatch(row -> row.contains("[erased] held the lamp; [erased]’s case smells of smoke."))
                .anyMatch(row -> row.contains("[erased] Stachel ist neu."));
        assertThat(after.getOrDefault("invoice", List.of()))
                .singleElement()
                .satisfies(row -> assertThat(row).contains("[erased]", "120"));
    }

    @Test
    void searchFindsTheInstrumentAndNoPerson() {
        InstrumentStore instruments = new InstrumentStore(shop.ledger);
        assertThat(instruments.find("Vantongeren")).isNotEmpty();
        erase(true);
        assertThat(instruments.find("Vantongeren")).isEmpty();
        assertThat(instruments.find("Viola")).hasSize(1);
    }

    @Test
    void theOtherOwnerIsUntouched() throws Exception {
        List<String> before = rowsOf("Quirrenbach");
        erase(true);
        assertThat(rowsOf("Quirrenbach")).isEqualTo(before).isNotEmpty();
    }

    private List<String> rowsOf(String name) throws Exception {
        List<String> rows = new ArrayList<>();
        WholeShop.rows(root)
                .values()
                .forEach(table ->
                        table.stream().filter(row -> row.contains(name)).forEach(rows::add));
        return rows;
    }

    @Test
    void picturesKeepTheirPixelsAndLoseThePlace() throws Exception {
        erase(true);
        int places = 0;
        try (Stream<Path> files = Files.list(root.resolve("photographs"))) {
            for (Path file : files.toList()) {
                places += ImageMetadataReader.readMetadata(file.toFile())
                        .getDirectoriesOfType(GpsDirectory.class)
                        .size();
            }
        }
        assertThat(places).as("only that of the other owner").isEqualTo(1);
        assertThat(WholeShop.files(root)).hasSize(2);
        List<String> named = shop.ledger.read(handle -> handle.createQuery("SELECT sha256 FROM photograph")
                .mapTo(String.class)
                .list());
        assertThat(named)
                .allSatisfy(name ->
                        assertThat(root.resolve("photographs").resolve(name)).isRegularFile());
    }

    @Test
    void historyIsKeptAgainAfterwards() {
        erase(true);
        for (String table : List.of("finding", "diary_entry", "erasing")) {
            assertThatThrownBy(() -> shop.ledger.change(handle -> handle.execute("DELETE FROM " + table)))
                    .hasMessageContaining("history is kept: " + table);
        }
        assertThat(shop.ledger.<Integer>read(handle -> handle.createQuery("SELECT count(*) FROM erasing")
                        .mapTo(Integer.class)
                        .one()))
                .isEqualTo(1);
    }

    /** A change that fails takes nothing away, and leaves the triggers on. */
    @Test
    void aFailedErasingChangesNothing() throws Exception {
        Map<String, List<String>> before = WholeShop.rows(root);
        assertThatThrownBy(() -> shop.ledger.erase(handle -> {
                    handle.execute("DELETE FROM finding_photograph");
                    throw new IllegalStateException("disk full");
                }))
                .hasMessageContaining("disk full");
        assertThat(WholeShop.rows(root)).isEqualTo(before);
        assertThatThrownBy(() -> shop.ledger.change(handle -> handle.execute("DELETE FROM finding_photograph")))
                .hasMessageContaining("history is kept");
    }

    @Test
    void aNameThatIsAWordOfTheProgramBreaksNoRow() throws Exception {
        eraser.erase(1, List.of("Before", "Yes", "Viola", "Old", "Note"), true, "M", SmallShop.NOW);
        assertThat(WholeShop.rows(root).getOrDefault("finding", List.of())).allMatch(row -> row.contains("OLD"));
        assertThat(new OwnerStore(shop.ledger).get(1).name()).isEqualTo("Erased owner 1");
    }
}
