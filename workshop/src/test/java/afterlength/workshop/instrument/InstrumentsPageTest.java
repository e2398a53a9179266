package afterlength.workshop.instrument;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list of instruments: all of a small shop, the latest of a large one until all are asked for. */
class InstrumentsPageTest {
    @TempDir
    Path folder;

    @Test
    void aLongListIsCutAndSaysSo() {
        Ledger ledger = Ledger.open(ShopFolder.open(folder));
        VisitStore visits = new VisitStore(ledger);
        for (int number = 1; number <= InstrumentPages.SHOWN + 2; number++) {
            visits.receive(arrival("Violin " + number));
        }
        try (OpenedDesk desk = desk(ledger)) {
            Document latest = desk.get("/instruments").page();
            assertThat(latest.select(".answer").text()).isEqualTo("102 instruments, the latest 100 here");
            assertThat(latest.select(".register .what").eachText()).hasSize(100).contains("Violin 102", "Violin 3");
            Document all = desk.get("/instruments?all=yes").page();
            assertThat(all.select(".answer").text()).isEqualTo("102 instruments");
            assertThat(all.select(".register .what").eachText()).hasSize(102).contains("Violin 1");
            assertThat(desk.get("/instruments?find=violin+7+tamm").page()
                            .select(".answer")
                            .text())
                    .as("those with a 7 in their number")
                    .isEqualTo("19 instruments");
        }
    }

    private static Arrival arrival(String name) {
        return new Arrival(
                new Owner(0, "Ilse Tamm", "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.VIOLIN, name, "", "", "", "", null, "", "", null, 1),
                new Visit(0, 0, "", LocalDate.of(2026, 10, 26), "", "an open seam", "", "", "", null, null, 1));
    }

    private static OpenedDesk desk(Ledger ledger) {
        Frames frames = new Frames(new SettingsStore(ledger));
        return OpenedDesk.with(new InstrumentPages(
                frames, new OwnerStore(ledger), new InstrumentStore(ledger), new VisitStore(ledger), List.of()));
    }
}
