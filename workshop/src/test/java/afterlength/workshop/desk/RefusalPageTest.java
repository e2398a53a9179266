package afterlength.workshop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.ShopFolder;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a page says when something cannot be done, and what becomes of the words that were typed. */
class RefusalPageTest {
    @TempDir
    Path folder;

    /** A row of history is replaced once; the table stands for all of ours. */
    @Test
    void whoComesTooLateForARowOfHistoryFindsTheTypedWordsAgain() {
        Ledger ledger = Ledger.open(ShopFolder.open(folder));
        Room twice = routes -> routes.post(
                "/twice",
                context -> ledger.change(handle -> {
                    handle.execute("CREATE TABLE told (replaces INTEGER UNIQUE)");
                    handle.execute("INSERT INTO told VALUES (1)");
                    handle.execute("INSERT INTO told VALUES (1)");
                }));
        try (OpenedDesk desk = OpenedDesk.with(twice)) {
            OpenedDesk.Answer late = desk.post("/twice", "remark", "words of the second hand");
            assertThat(late.status()).isEqualTo(409);
            assertThat(late.words())
                    .contains("Somebody else changed this", "What you typed", "words of the second hand")
                    .doesNotContain("Try again");
        }
    }
}
