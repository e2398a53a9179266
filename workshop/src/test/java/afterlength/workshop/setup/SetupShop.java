package afterlength.workshop.setup;

import afterlength.workshop.desk.Frames;
import afterlength.workshop.examination.CalibratedCameraStore;
import afterlength.workshop.examination.CardPrintStore;
import afterlength.workshop.examination.CardSearches;
import afterlength.workshop.examination.MarkStore;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.examination.TracedMarks;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** A real shop in a folder with one violin received, and the set-up stage over it. */
final class SetupShop {
    static final Instant NOW = Instant.parse("2026-03-02T09:15:00Z");

    final Ledger ledger;
    final SetupStore setups;
    final VisitStore visits;
    final Visit visit;
    private final SettingsStore settings;
    private final InstrumentStore instruments;
    private final TracedMarks traced;

    SetupShop(Path root) {
        ShopFolder folder = ShopFolder.open(root);
        ledger = Ledger.open(folder);
        traced = new TracedMarks(
                new PhotographStore(ledger),
                new MarkStore(ledger),
                new CardSearches(
                        new Photographs(folder), new CardPrintStore(ledger), new CalibratedCameraStore(ledger)));
        settings = new SettingsStore(ledger);
        instruments = new InstrumentStore(ledger);
        visits = new VisitStore(ledger);
        setups = new SetupStore(ledger);
        visit = visits.receive(new Arrival(
                new Owner(0, "Ida Beispiel", "", "", "", "", 1),
                new Instrument(
                        0, 0, InstrumentKind.VIOLIN, "Violin, about 1905", "", "", "none", "", 356.0, "", "", 1956, 1),
                new Visit(0, 0, "", LocalDate.of(2026, 3, 2), "", "New bridge", "", "case", "", null, null, 1)));
    }

    SetupPages pages() {
        return new SetupPages(
                new Frames(settings),
                instruments,
                visits,
                setups,
                new SetupStart(setups, new MeasureStore(ledger), instruments, settings),
                new BridgeSheets(instruments, setups, new MeasureStore(ledger), settings, "Afterlength test"),
                traced,
                Clock.fixed(NOW, ZoneOffset.UTC));
    }

    Setup setup(SetupMoment moment, SetupBench bench) {
        return new Setup(0, visit.id(), moment, bench, NOW, "M. Muster");
    }
}
