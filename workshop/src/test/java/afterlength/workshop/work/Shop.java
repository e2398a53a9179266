package afterlength.workshop.work;

import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.agreement.Consent;
import afterlength.workshop.agreement.Means;
import afterlength.workshop.agreement.Treatment;
import afterlength.workshop.agreement.TreatmentStore;
import afterlength.workshop.agreement.TreatmentTemplates;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
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
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A real shop in a folder of its own: Wednesday 4 November 2026, a quarter past one, closing at 18:00. */
final class Shop {
    static final LocalDate RECEIVED = LocalDate.of(2026, 10, 26);

    final BenchClock clock = new BenchClock("2026-11-04T13:15:00Z");
    final Ledger ledger;
    final SettingsStore settings;
    final VisitStore visits;
    final TreatmentStore treatments;
    final AgreementStore agreements;
    final StepStore steps;
    final DiaryStore diary;
    final MaterialStore materials;
    final OneTap tap;

    Shop(Path folder) {
        ledger = Ledger.open(ShopFolder.open(folder));
        settings = new SettingsStore(ledger);
        visits = new VisitStore(ledger);
        treatments = new TreatmentStore(ledger);
        agreements = new AgreementStore(ledger, settings, clock, List.of(new AgreedSteps()));
        steps = new StepStore(ledger);
        diary = new DiaryStore(ledger);
        materials = new MaterialStore(ledger);
        tap = new OneTap(ledger);
    }

    OpenedDesk open() {
        Frames frames = new Frames(settings);
        InstrumentStore instruments = new InstrumentStore(ledger);
        return OpenedDesk.with(
                new WorkRoom(frames, ledger, settings, instruments, visits, clock),
                new InstrumentPages(
                        frames,
                        new OwnerStore(ledger),
                        instruments,
                        visits,
                        List.of(new WorkChapter(steps, diary, clock))));
    }

    Visit receive(String instrument, @Nullable LocalDate promised) {
        return visits.receive(new Arrival(
                new Owner(0, "Ilse Tamm", "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.VIOLA, instrument, "", "", "", "", null, "", "", null, 1),
                new Visit(0, 0, "", RECEIVED, "", "an open seam", "", "", "", null, promised, 1)));
    }

    /** Puts treatments of these templates into the proposal. */
    List<Treatment> propose(Visit visit, String... templates) {
        return Arrays.stream(templates)
                .map(key -> treatments.add(Treatment.from(TreatmentTemplates.get(key), visit.id()), List.of()))
                .toList();
    }

    void agree(Visit visit, List<Treatment> accepted) {
        agreements.agree(new Consent(
                visit.id(),
                accepted.stream().map(Treatment::id).collect(Collectors.toSet()),
                LocalDate.of(2026, 10, 30),
                "Ilse Tamm",
                Means.IN_PERSON,
                null,
                visit.promisedOn(),
                "",
                "bench"));
    }

    /** A visit with agreed treatments. */
    Visit inWork(String instrument, @Nullable LocalDate promised, String... templates) {
        Visit visit = receive(instrument, promised);
        agree(visit, propose(visit, templates));
        return visit;
    }

    /** The step of that name among all of a visit. */
    Step step(Visit visit, String name) {
        return steps.list(visit.id()).stream()
                .filter(step -> step.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    List<String> order(Visit visit) {
        return steps.list(visit.id()).stream()
                .filter(step -> !step.dropped())
                .map(Step::name)
                .toList();
    }
}
