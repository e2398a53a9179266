package afterlength.workshop.examination;

import afterlength.sight.picture.PictureFile;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.Room;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.InstrumentPages;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.OwnerStore;
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
import java.util.List;

/** A real shop in a folder with one viola received, and the stores of this stage over it. */
final class ExaminedShop {
    static final Instant NOW = Instant.parse("2026-03-02T09:15:00Z");
    static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);

    final ShopFolder folder;
    final Ledger ledger;
    final SettingsStore settings;
    final OwnerStore owners;
    final InstrumentStore instruments;
    final VisitStore visits;
    final PhotographStore photographs;
    final Photographs originals;
    final SmallPictures small;
    final PhotographIntake intake;
    final FindingStore findings;
    final SittingStore sittings;
    final MeasureStore measures;
    final RoomAir roomAir;
    final MarkStore marks;
    final CardPrintStore cardPrints;
    final CalibratedCameraStore calibratedCameras;
    final CardSearches searches;
    final ConditionReports reports;
    final CustodyReceipts receipts;
    final Visit visit;

    ExaminedShop(Path root) {
        folder = ShopFolder.open(root);
        ledger = Ledger.open(folder);
        settings = new SettingsStore(ledger);
        owners = new OwnerStore(ledger);
        instruments = new InstrumentStore(ledger);
        visits = new VisitStore(ledger);
        photographs = new PhotographStore(ledger);
        originals = new Photographs(folder);
        small = new SmallPictures(folder, originals);
        intake = new PhotographIntake(photographs, originals, small, CLOCK);
        findings = new FindingStore(ledger);
        sittings = new SittingStore(ledger);
        measures = new MeasureStore(ledger);
        roomAir = new RoomAir(ledger);
        marks = new MarkStore(ledger);
        cardPrints = new CardPrintStore(ledger);
        calibratedCameras = new CalibratedCameraStore(ledger);
        searches = new CardSearches(originals, cardPrints, calibratedCameras, Runnable::run);
        reports = new ConditionReports(
                owners, instruments, photographs, findings, sittings, measures, marks, small, CLOCK);
        receipts = new CustodyReceipts(owners, instruments, photographs, small);
        visit = visits.receive(arrival());
    }

    private static Arrival arrival() {
        return new Arrival(
                new Owner(0, "Ida Beispiel", "", "", "", "", 1),
                new Instrument(
                        0, 0, InstrumentKind.VIOLA, "Viola, about 1905", "", "", "none", "", 405.0, "", "", 1956, 1),
                new Visit(0, 0, "", LocalDate.of(2026, 3, 2), "", "Crack in the top", "", "case", "", null, null, 1));
    }

    /** All rooms of this stage, as the house opens them. */
    Room[] rooms() {
        Frames frames = new Frames(settings);
        VisitHome home = new VisitHome(frames, visits, instruments);
        MarkGrounds grounds = new MarkGrounds(home, photographs);
        return new Room[] {
            new InstrumentPages(
                    frames,
                    owners,
                    instruments,
                    visits,
                    List.of(new ExaminationChapter(photographs, findings, measures))),
            new PhotographPages(home, photographs, intake),
            new PictureRoom(photographs, originals, small),
            new CardPages(grounds, searches, "Afterlength test"),
            new MarkPages(home, grounds, settings, findings, marks, searches, cardPrints, CLOCK),
            new CameraPages(
                    frames, settings, calibratedCameras, new LensGathering(Runnable::run), cardPrints, searches, CLOCK),
            new MarkActions(grounds, marks, findings, searches, CLOCK),
            new MarkFiles(grounds, marks, findings, searches),
            new FlatRoom(home, grounds, searches, new FlatPictures(folder, originals)),
            new FindingPages(home, settings, findings, photographs, sittings, marks, CLOCK),
            new SittingPages(home, settings, sittings, roomAir, CLOCK),
            new MeasurePages(home, settings, measures, roomAir, CLOCK),
            new ReportPages(home, settings, reports, receipts)
        };
    }

    Photograph take(byte[] picture, Moment moment, String view) {
        Taken taken = intake.take(visit.id(), new PictureFile("a.jpg", picture), new PhotographWords(moment, view, ""));
        return ((Taken.Kept) taken).photograph();
    }

    Finding finding(String part, String kind, String observation) {
        return new Finding(
                0,
                visit.id(),
                null,
                false,
                part,
                kind,
                "bass side",
                42.0,
                0.5,
                "",
                FindingAge.OLD,
                Answer.YES,
                Answer.NO,
                observation,
                "",
                NOW,
                "M. Muster",
                NOW);
    }

    Measure measure(Moment moment, Quantity quantity, double value, double plusMinus, double humidity_pct) {
        return new Measure(
                0,
                visit.id(),
                null,
                false,
                moment,
                quantity.name(),
                value,
                quantity.unit(),
                plusMinus,
                "steel rule",
                20.0,
                humidity_pct,
                NOW,
                "M. Muster",
                NOW);
    }
}
