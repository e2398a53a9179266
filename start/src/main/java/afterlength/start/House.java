package afterlength.start;

import afterlength.workshop.agreement.AgreementChapter;
import afterlength.workshop.agreement.AgreementPages;
import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.agreement.FindingLines;
import afterlength.workshop.agreement.Proposals;
import afterlength.workshop.agreement.TreatmentPages;
import afterlength.workshop.agreement.TreatmentStore;
import afterlength.workshop.desk.Desk;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.desk.SourcesPages;
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
import afterlength.workshop.work.AgreedSteps;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.MaterialStore;
import afterlength.workshop.work.StepStore;
import afterlength.workshop.work.WorkChapter;
import afterlength.workshop.work.WorkRoom;
import java.time.Clock;
import java.util.List;

/** One shop, wired: its stores, and the pages over them. Stages are named in the order of the job. */
final class House {
    final SettingsStore settings;
    final OwnerStore owners;
    final InstrumentStore instruments;
    final VisitStore visits;
    final FindingLines findingLines;
    final TreatmentStore treatments;
    final AgreementStore agreements;
    final StepStore steps;
    final DiaryStore diary;
    final MaterialStore materials;
    final SetupStore setups;
    private final Ledger ledger;
    private final Clock clock;

    private House(Ledger ledger, Clock clock) {
        this.ledger = ledger;
        this.clock = clock;
        settings = new SettingsStore(ledger);
        owners = new OwnerStore(ledger);
        instruments = new InstrumentStore(ledger);
        visits = new VisitStore(ledger);
        findingLines = new FindingLines(ledger);
        treatments = new TreatmentStore(ledger);
        agreements = new AgreementStore(ledger, settings, clock, List.of(new AgreedSteps()));
        steps = new StepStore(ledger);
        diary = new DiaryStore(ledger);
        materials = new MaterialStore(ledger);
        setups = new SetupStore(ledger);
    }

    static House of(ShopFolder folder, Clock clock) {
        return new House(Ledger.open(folder), clock);
    }

    Desk openDesk(int port) {
        Frames frames = new Frames(settings);
        Proposals proposals =
                new Proposals(settings, owners, instruments, visits, findingLines, treatments, agreements);
        List<Chapter> chapters = List.of(
                new AgreementChapter(proposals), new WorkChapter(steps, diary, clock), new SetupChapter(setups));
        List<Room> rooms = List.of(
                new InstrumentPages(frames, owners, instruments, visits, chapters),
                new ReceivePages(frames, settings, owners, instruments, visits, clock),
                new TreatmentPages(frames, settings, visits, findingLines, treatments),
                new AgreementPages(frames, proposals, treatments, agreements, clock),
                new WorkRoom(frames, ledger, settings, instruments, visits, clock),
                new SourcesPages(frames),
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
