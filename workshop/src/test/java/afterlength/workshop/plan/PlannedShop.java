package afterlength.workshop.plan;

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
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Owner;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Ledger;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.work.AgreedSteps;
import afterlength.workshop.work.ComingChecks;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.Step;
import afterlength.workshop.work.StepStore;
import afterlength.workshop.work.WorkRoom;
import afterlength.workshop.work.Writing;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** A real shop of two with a plan: Wednesday 4 November 2026, ten o'clock, closing at 18:00. */
final class PlannedShop {
    private final Told clock = new Told();
    final Ledger ledger;
    final SettingsStore settings;
    final VisitStore visits;
    final TreatmentStore treatments;
    final AgreementStore agreements;
    final StepStore steps;
    final DiaryStore diary;
    final BenchPlans plans;
    final PlanAgreed agreed;

    /** A clock that moves only when told. */
    private static final class Told extends Clock {
        private volatile Instant now = Instant.parse("2026-11-04T10:00:00Z");

        @Override
        public Instant instant() {
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException("this clock stays in its zone");
        }
    }

    PlannedShop(Path folder) {
        ledger = Ledger.open(ShopFolder.open(folder));
        settings = new SettingsStore(ledger);
        Settings fresh = Settings.FRESH;
        settings.put(new Settings(
                "Shop", "", List.of("Ada", "Ben"), "EUR", fresh.perHour(), 0, false, LocalTime.of(18, 0), false));
        visits = new VisitStore(ledger);
        treatments = new TreatmentStore(ledger);
        plans = new BenchPlans(ledger, settings, clock);
        agreed = new PlanAgreed(ledger, plans);
        agreements = new AgreementStore(ledger, settings, clock, List.of(new AgreedSteps(), agreed));
        steps = new StepStore(ledger);
        diary = new DiaryStore(ledger);
    }

    OpenedDesk open() {
        Frames frames = new Frames(settings);
        InstrumentStore instruments = new InstrumentStore(ledger);
        return OpenedDesk.with(
                new WorkRoom(
                        frames,
                        ledger,
                        settings,
                        instruments,
                        visits,
                        List.of(),
                        new PlanAhead(plans),
                        ComingChecks.NONE,
                        clock),
                new PlanRoom(frames, ledger, settings, instruments, visits, plans, agreed));
    }

    Instant now() {
        return clock.now;
    }

    void pass(Duration time) {
        clock.now = clock.now.plus(time);
    }

    Visit receive(String instrument) {
        return visits.receive(new Arrival(
                new Owner(0, "Ilse Tamm", "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.VIOLA, instrument, "", "", "", "", null, "", "", null, 1),
                new Visit(0, 0, "", LocalDate.of(2026, 10, 26), "", "an open seam", "", "", "", null, null, 1)));
    }

    List<Treatment> propose(Visit visit, String... templates) {
        return Arrays.stream(templates)
                .map(key -> treatments.add(Treatment.from(TreatmentTemplates.get(key), visit.id()), List.of()))
                .toList();
    }

    Visit inWork(String instrument, LocalDate promised, String... templates) {
        Visit visit = receive(instrument);
        List<Treatment> offered = propose(visit, templates);
        agreements.agree(new Consent(
                visit.id(),
                offered.stream().map(Treatment::id).collect(Collectors.toSet()),
                LocalDate.of(2026, 10, 30),
                "Ilse Tamm",
                Means.IN_PERSON,
                null,
                promised,
                "",
                "Ada"));
        return visit;
    }

    Step step(Visit visit, int n) {
        return steps.list(visit.id()).get(n);
    }

    void done(Visit visit, int n) {
        diary.write(Writing.done(step(visit, n), now(), 10, "Ada"), now());
    }

    KeptPlan plan() {
        return plans.planAndTake("a test", "Ada", 300).orElseThrow();
    }

    CheckedPlan shown() {
        return ((PlanAnswer.Planned) plans.now()).plan();
    }
}
