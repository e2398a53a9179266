package afterlength.start;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.ledger.Backup;
import afterlength.workshop.ledger.BackupTrial;
import afterlength.workshop.ledger.Backups;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.ShopFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/** Every change that a shop answered for, and whether it kept its word. Two hands write here at once. */
final class Promises {
    private record Row(String question, String word) {}

    private record Picture(String sha256, long bytes) {}

    /** A name given to the shop, asked for and answered at these counts of the clock; not answered yet, at the end of time. */
    private record Named(String word, long asked, long answered) {
        boolean isAnswered() {
            return answered < Long.MAX_VALUE;
        }
    }

    private final List<Row> rows = new ArrayList<>();
    private final List<Picture> pictures = new ArrayList<>();
    private final List<Named> names = new ArrayList<>();
    private long clock;
    private int backups;
    private int plans;

    synchronized void row(String question, String word) {
        rows.add(new Row(question, word));
    }

    synchronized void photograph(String sha256, long bytes) {
        pictures.add(new Picture(sha256, bytes));
    }

    synchronized void settingTried(String word) {
        names.add(new Named(word, clock++, Long.MAX_VALUE));
    }

    synchronized void settingKept(String word) {
        names.replaceAll(named -> named.word().equals(word) ? new Named(word, named.asked(), clock++) : named);
    }

    synchronized void backup() {
        backups++;
    }

    synchronized void plan() {
        plans++;
    }

    synchronized int count() {
        return rows.size() + pictures.size() + backups + plans + (names.stream().anyMatch(Named::isAnswered) ? 1 : 0);
    }

    /** Opens the shop as it was left and looks for everything. */
    synchronized void check(Path folder, String run) throws IOException {
        ShopFolder shop = ShopFolder.open(folder);
        Ledger ledger = Ledger.open(shop);
        assertThat(texts(ledger, "PRAGMA integrity_check")).as(run).containsExactly("ok");
        assertThat(texts(ledger, "SELECT \"table\" FROM pragma_foreign_key_check"))
                .as(run)
                .isEmpty();
        for (Row row : rows) {
            assertThat(count(ledger, row)).as(run + ": " + row).isEqualTo(1);
        }
        checkPlansAndBills(ledger, run);
        checkSetting(ledger, run);
        checkPictures(shop, ledger, run);
        checkBackups(shop, run);
    }

    /** Numbers of bills run without a gap, and each has the lines it was issued with. */
    private void checkPlansAndBills(Ledger ledger, String run) {
        assertThat(number(ledger, "SELECT count(*) FROM bench_plan")).as(run).isGreaterThanOrEqualTo(plans);
        assertThat(number(ledger, "SELECT coalesce(max(serial), 0) - count(*) FROM invoice"))
                .as(run + ": no number of a bill is left out")
                .isZero();
        assertThat(number(ledger, """
                        SELECT count(*) FROM invoice
                        WHERE id NOT IN (SELECT invoice_id FROM invoice_line)""")).as(run + ": no bill without its lines").isZero();
    }

    /** Of two names under way at once either may be the last, whichever answer came first. */
    private void checkSetting(Ledger ledger, String run) {
        List<String> possible = names.stream()
                .filter(named ->
                        names.stream().noneMatch(other -> other.isAnswered() && other.asked() > named.answered()))
                .map(Named::word)
                .toList();
        if (names.stream().anyMatch(Named::isAnswered)) {
            assertThat(possible)
                    .as(run + ": the shop's name is one that no other answered for was asked for after")
                    .contains(texts(ledger, "SELECT value FROM setting WHERE name = 'shop_name'")
                            .get(0));
        }
    }

    private void checkPictures(ShopFolder shop, Ledger ledger, String run) throws IOException {
        List<String> known = texts(ledger, "SELECT sha256 FROM photograph");
        for (Picture picture : pictures) {
            assertThat(known).as(run).contains(picture.sha256());
            assertThat(Files.size(shop.photographs().resolve(picture.sha256()))).isEqualTo(picture.bytes());
        }
        for (String name : known) {
            assertThat(shop.photographs().resolve(name)).as(run).isRegularFile();
        }
        try (Stream<Path> files = Files.list(shop.photographs())) {
            for (Path file :
                    files.filter(file -> !file.toString().endsWith(".part")).toList()) {
                assertThat(sha256(file))
                        .as(run + ": no half photograph")
                        .isEqualTo(file.getFileName().toString());
            }
        }
    }

    private void checkBackups(ShopFolder shop, String run) throws IOException {
        List<Backup> kept = new Backups(shop).list();
        assertThat(kept.size()).as(run).isGreaterThanOrEqualTo(backups);
        if (!kept.isEmpty()) {
            assertThat(BackupTrial.run(kept.get(0), BackupTrial.Extent.ALL).faults())
                    .as(run)
                    .isEmpty();
        }
    }

    private static List<String> texts(Ledger ledger, String question) {
        return ledger.read(
                handle -> handle.createQuery(question).mapTo(String.class).list());
    }

    private static int number(Ledger ledger, String question) {
        return ledger.read(
                handle -> handle.createQuery(question).mapTo(Integer.class).one());
    }

    private static int count(Ledger ledger, Row row) {
        return ledger.read(handle -> handle.createQuery(row.question())
                .bind(0, row.word())
                .mapTo(Integer.class)
                .one());
    }

    private static String sha256(Path file) throws IOException {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
