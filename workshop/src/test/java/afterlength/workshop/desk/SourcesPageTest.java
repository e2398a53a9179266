package afterlength.workshop.desk;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourcesPageTest {
    @TempDir
    Path folder;

    @Test
    void eachSourceHasAnAnchorAndNothingInItIsRunAsMarkup() {
        String text = "# Sources\n\n## one-source\nA *book* with <b>signs</b> & `code`.";
        Frames frames = new Frames(new SettingsStore(Ledger.open(ShopFolder.open(folder))));
        try (OpenedDesk desk = OpenedDesk.with(new SourcesPages(frames, text))) {
            OpenedDesk.Answer page = desk.get("/sources");
            assertThat(page.words("h1")).isEqualTo("Where the numbers come from");
            assertThat(page.words("#one-source")).isEqualTo("one-source");
            assertThat(page.words(".sources p")).isEqualTo("A book with <b>signs</b> & code.");
            assertThat(page.words(".sources em")).isEqualTo("book");
        }
    }

    @Test
    void theProgramCarriesSomethingToRead() {
        assertThat(SourceText.read(SourcesPages.bundled())).isNotEmpty();
    }
}
