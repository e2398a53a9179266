package afterlength.workshop.handover;

import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.examination.Answer;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingAge;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.Measure;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.examination.Moment;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.examination.Quantity;
import afterlength.workshop.examination.SmallPictures;
import afterlength.workshop.instrument.Arrival;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentKind;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Photographs;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.retouch.MendedLineStore;
import afterlength.workshop.setup.SetupStore;
import afterlength.workshop.work.DiaryStore;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A real shop with one violin in it, on 4 November 2026, and the papers of the last stage over it. */
final class HandedOverShop {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 4);

    final Clock clock = Clock.fixed(Instant.parse("2026-11-04T10:00:00Z"), ZoneOffset.UTC);
    final Ledger ledger;
    final SettingsStore settings;
    final InstrumentStore instruments;
    final VisitStore visits;
    final FindingStore findings;
    final MeasureStore measures;
    final HandoverStore handovers;
    final CareSheets careSheets;
    final FinalReports reports;
    final Visit visit;

    HandedOverShop(Path root, String ownerName, GluedJoints joints) {
        ShopFolder folder = ShopFolder.open(root);
        ledger = Ledger.open(folder);
        settings = new SettingsStore(ledger);
        OwnerStore owners = new OwnerStore(ledger);
        instruments = new InstrumentStore(ledger);
        visits = new VisitStore(ledger);
        findings = new FindingStore(ledger);
        measures = new MeasureStore(ledger);
        handovers = new HandoverStore(ledger);
        careSheets = new CareSheets(settings, owners, instruments, measures, handovers, clock);
        reports = new FinalReports(
                settings,
                owners,
                instruments,
                new PhotographStore(ledger),
                new SmallPictures(folder, new Photographs(folder)),
                findings,
                measures,
                new AgreementStore(ledger, settings, clock, List.of()),
                new DiaryStore(ledger),
                new SetupStore(ledger),
                new MendedLineStore(ledger),
                handovers,
                joints,
                clock);
        visit = visits.receive(new Arrival(
                new Owner(0, ownerName, "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.VIOLIN, "Violin", "", "", "", "", null, "", "", null, 1),
                new Visit(0, 0, "", TODAY.minusDays(9), "", "It buzzes.", "", "", "", null, null, 1)));
    }

    void handOver(String care, String leftAsItWas) {
        handovers.save(new Handover(
                0, visit.id(), TODAY, "Ilse Tamm", leftAsItWas, care, "", TODAY.plusYears(1), clock.instant(), "Ines"));
    }

    long measure(Moment moment, double value, @Nullable Long replaces, Instant written) {
        Measure measure = new Measure(
                0,
                visit.id(),
                replaces,
                false,
                moment,
                Quantity.PROJECTION.name(),
                value,
                "mm",
                0.2,
                "steel rule",
                20.0,
                45.0,
                clock.instant(),
                "Ines",
                written);
        return replaces == null
                ? measures.add(measure)
                : measures.correct(measure).orElseThrow();
    }

    void find(String kind, String observation) {
        findings.add(
                new Finding(
                        0,
                        visit.id(),
                        null,
                        false,
                        "top",
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
                        clock.instant(),
                        "Ines",
                        clock.instant()),
                List.of());
    }
}
