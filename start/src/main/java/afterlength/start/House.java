package afterlength.start;

import afterlength.workshop.desk.Desk;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.InstrumentPages;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.ReceivePages;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.setup.BridgeSheets;
import afterlength.workshop.setup.SetupChapter;
import afterlength.workshop.setup.SetupPages;
import afterlength.workshop.setup.SetupStart;
import afterlength.workshop.setup.SetupStore;
import java.time.Clock;
import java.util.List;

/** One shop, wired: its stores, and the pages over them. Stages are named in the order of the job. */
final class House {
    final SettingsStore settings;
    final OwnerStore owners;
    final InstrumentStore instruments;
    final VisitStore visits;
    final SetupStore setups;
    private final Clock clock;

    private House(Ledger ledger, Clock clock) {
        this.clock = clock;
        settings = new SettingsStore(ledger);
        owners = new OwnerStore(ledger);
        instruments = new InstrumentStore(ledger);
        visits = new VisitStore(ledger);
        setups = new SetupStore(ledger);
    }

    static House of(ShopFolder folder, Clock clock) {
        return new House(Ledger.open(folder), clock);
    }

    Desk openDesk(int port) {
        Frames frames = new Frames(settings);
        List<Chapter> chapters = List.of(new SetupChapter(setups));
        List<Room> rooms = List.of(
                new InstrumentPages(frames, owners, instruments, visits, chapters),
                new ReceivePages(frames, settings, owners, instruments, visits, clock),
                new SetupPages(
                        frames,
                        instruments,
                        visits,
                        setups,
                        new SetupStart(setups, instruments, settings),
                        new BridgeSheets(instruments, setups, settings, "Afterlength " + Version.get()),
                        clock));
        return Desk.open(port, rooms);
    }
}
