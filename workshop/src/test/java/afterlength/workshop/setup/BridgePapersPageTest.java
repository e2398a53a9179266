package afterlength.workshop.setup;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.desk.OpenedDesk.Answer;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.Quantity;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.paper.PdfRuler;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Papers of a saved set-up, from the shop's database to the page. */
class BridgePapersPageTest {
    private static final Instant NOW = Instant.parse("2026-03-03T12:00:00Z");

    @TempDir
    Path folder;

    private SetupStore setups;
    private MeasureStore measures;
    private BridgeSheets sheets;
    private Visit visit;
    private OpenedDesk desk;

    @BeforeEach
    void openShop() {
        Ledger ledger = Ledger.open(ShopFolder.open(folder));
        VisitStore visits = new VisitStore(ledger);
        setups = new SetupStore(ledger);
        measures = new MeasureStore(ledger);
        sheets = new BridgeSheets(
                new InstrumentStore(ledger), setups, measures, new SettingsStore(ledger), "Afterlength 0.1.0");
        visit = visits.receive(new Arrival(
                new Owner(0, "Ida Beispiel", "", "", "", "", 1),
                new Instrument(
                        0, 0, InstrumentKind.VIOLIN, "Violin, about 1905", "", "", "none", "", 356.0, "", "", null, 1),
                new Visit(0, 0, "", LocalDate.of(2026, 3, 2), "", "Bridge leans", "", "case", "", null, null, 1)));
        desk = OpenedDesk.with(new BridgePapers(visits, sheets));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    private void saveBridge() {
        setups.save(new Setup(0, visit.id(), SetupMoment.AFTER, Bench.violin().inputs(), NOW, "M. Muster"));
    }

    private void measure(String quantity, double value, double plusMinus) {
        measures.add(new Measure(
                0,
                visit.id(),
                null,
                false,
                Moment.AFTER,
                quantity,
                value,
                "mm",
                plusMinus,
                "steel rule",
                20.5,
                48.0,
                NOW,
                "M. Muster",
                NOW));
    }

    @Test
    void everyPaperOfASavedSetUpIsServed() {
        saveBridge();
        for (String paper : new String[] {"crown-templates.pdf", "setup-card.pdf", "bridge.svg"}) {
            Answer answer = desk.get("/visits/" + visit.id() + "/" + paper + "?moment=AFTER");
            assertThat(answer.status()).as(paper).isEqualTo(200);
        }
        assertThat(sheets.svg(visit, SetupMoment.AFTER)).contains("Violin, about 1905, visit " + visit.number());
    }

    @Test
    void withoutASavedSetUpThereIsNoPaper() {
        Answer answer = desk.get("/visits/" + visit.id() + "/crown-templates.pdf?moment=BEFORE");
        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.words()).contains("saved set-up as it came for visit " + visit.number());
    }

    @Test
    void theCardShowsWhatWasMeasuredAndLeavesTheRestToThePencil() {
        saveBridge();
        measure(Quantity.AFTER_LENGTH.name(), 55, 0.5);
        measure("Post behind the foot", 2.5, 0.3);
        measure(Quantity.BOARD_END_CLEARANCE_BASS.name(), 5.4, 0.2);
        try (PdfRuler ruler = PdfRuler.of(sheets.card(visit, SetupMoment.AFTER))) {
            assertThat(ruler.text().replace('\u00a0', ' '))
                    .contains("String behind the bridge 55.0 ± 0.5 mm")
                    .contains("Post, from the treble foot behind the foot 2.5 ± 0.3 mm")
                    .contains("Air of the day 20.5 °C, 48 % RH")
                    .doesNotContain("5.4 ± 0.2");
        }
    }

    @Test
    void whatWasMeasuredAsItCameIsNotOnTheCard() {
        measures.add(new Measure(
                0,
                visit.id(),
                null,
                false,
                Moment.BEFORE,
                Quantity.AFTER_LENGTH.name(),
                57,
                "mm",
                0.5,
                "steel rule",
                20.5,
                48.0,
                NOW,
                "M. Muster",
                NOW));
        assertThat(CardFacts.of(measures.listNow(visit.id()))).isEqualTo(new CardFacts("", "", "", "", ""));
    }
}
