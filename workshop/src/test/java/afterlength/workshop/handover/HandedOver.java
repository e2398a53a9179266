package afterlength.workshop.handover;

import afterlength.workshop.archive.SmallShop;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.examination.SmallPictures;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.Writing;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;

/** The small shop with its viola handed over, and the pages of that stage. */
final class HandedOver {
    final SmallShop shop;
    final MeasureStore measures;
    final VisitStore visits;
    final HandoverStore handovers;
    final DiaryStore diary;
    final OpenedDesk desk;

    HandedOver(Path root) throws IOException {
        shop = new SmallShop(root);
        measures = new MeasureStore(shop.ledger);
        visits = new VisitStore(shop.ledger);
        handovers = new HandoverStore(shop.ledger);
        diary = new DiaryStore(shop.ledger);
        measures.add(measure(shop.viola, Moment.AFTER, "PROJECTION", 32.0, 0.2, 45));
        handovers.save(new Handover(
                0,
                shop.viola.id(),
                LocalDate.of(2026, 4, 1),
                "Clementine Vantongeren",
                "a worn edge",
                "Keep it by the door, as Clementine likes.",
                "",
                LocalDate.of(2027, 4, 1),
                SmallShop.NOW,
                "M"));
        diary.write(
                Writing.note(
                        shop.viola.id(),
                        Instant.parse("2026-03-05T10:00:00Z"),
                        "Ida Muster",
                        "Clementine held the lamp."),
                SmallShop.NOW);
        desk = desk();
    }

    private OpenedDesk desk() {
        SettingsStore settings = new SettingsStore(shop.ledger);
        Frames frames = new Frames(settings);
        OwnerStore owners = new OwnerStore(shop.ledger);
        InstrumentStore instruments = new InstrumentStore(shop.ledger);
        Photographs originals = new Photographs(shop.folder);
        OwnerStories stories = new OwnerStories(
                settings,
                instruments,
                new PhotographStore(shop.ledger),
                new SmallPictures(shop.folder, originals),
                new FindingStore(shop.ledger),
                measures,
                diary,
                handovers);
        return OpenedDesk.with(
                new CalendarPages(instruments, visits, handovers, SmallShop.CLOCK),
                new CheckPages(frames, settings, instruments, visits, handovers, measures, SmallShop.CLOCK),
                new StoryPages(frames, owners, instruments, visits, stories));
    }

    /** The viola comes again after a year. */
    Visit comesAgain() {
        return visits.receiveAgain(new Visit(
                0,
                shop.viola.instrumentId(),
                "",
                LocalDate.of(2027, 4, 2),
                "",
                "Check",
                "",
                "",
                "",
                null,
                LocalDate.of(2027, 4, 9),
                1));
    }

    static Measure measure(
            Visit visit, Moment moment, String quantity, double value, double plusMinus, double humidity_pct) {
        return new Measure(
                0,
                visit.id(),
                null,
                false,
                moment,
                quantity,
                value,
                "mm",
                plusMinus,
                "straight-edge",
                20.0,
                humidity_pct,
                SmallShop.NOW,
                "M",
                SmallShop.NOW);
    }
}
