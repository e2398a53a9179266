package afterlength.workshop.invoice;

import afterlength.craft.units.Money;
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
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import afterlength.workshop.work.AgreedSteps;
import afterlength.workshop.work.DiaryStore;
import afterlength.workshop.work.Step;
import afterlength.workshop.work.StepStore;
import afterlength.workshop.work.Writing;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A real shop at EUR 60 an hour and 19 % tax, with one cello in it: a seam and a retouch proposed, on 4 November 2026. */
final class BilledShop {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 4);
    static final Money PER_HOUR = new Money(6000);

    final Ledger ledger;
    final Clock clock;
    final SettingsStore settings;
    final VisitStore visits;
    final TreatmentStore treatments;
    final AgreementStore agreements;
    final StepStore steps;
    final DiaryStore diary;
    final InvoiceStore invoices;
    final InvoiceRulesStore rules;
    final BillingCases cases;
    final InvoicePapers papers;
    final Visit visit;
    final Treatment seam;
    final Treatment retouch;
    private final OwnerStore owners;
    private final InstrumentStore instruments;

    BilledShop(Path folder) {
        this(folder, "2026-11-04T10:00:00Z");
    }

    BilledShop(Path folder, String now) {
        clock = Clock.fixed(Instant.parse(now), ZoneOffset.UTC);
        ledger = Ledger.open(ShopFolder.open(folder));
        settings = new SettingsStore(ledger);
        settings.put(settings(false));
        owners = new OwnerStore(ledger);
        instruments = new InstrumentStore(ledger);
        visits = new VisitStore(ledger);
        treatments = new TreatmentStore(ledger);
        agreements = new AgreementStore(ledger, settings, clock, List.of(new AgreedSteps()));
        steps = new StepStore(ledger);
        diary = new DiaryStore(ledger);
        invoices = new InvoiceStore(ledger, clock);
        rules = new InvoiceRulesStore(ledger);
        OfferedLines offered = new OfferedLines(agreements, treatments, steps, diary);
        cases = new BillingCases(settings, owners, instruments, visits, agreements, offered, invoices, rules);
        papers = new InvoicePapers(invoices, settings);
        visit = visits.receive(new Arrival(
                new Owner(0, "Ilse Tamm", "", "", "7 Weir Street\n4321 Rivertown", "", 1),
                new Instrument(0, 0, InstrumentKind.CELLO, "Cello, unlabelled", "", "", "", "", null, "", "", null, 1),
                new Visit(0, 0, "", TODAY.minusDays(9), "", "It buzzes.", "", "", "", null, null, 1)));
        seam = propose("seam");
        retouch = propose("retouch-spirit");
    }

    static Settings settings(boolean letterPaper) {
        return new Settings(
                "Workshop on the Mill Race",
                "12 Mill Race",
                List.of("Ines"),
                "EUR",
                PER_HOUR,
                190,
                letterPaper,
                LocalTime.of(17, 30),
                false);
    }

    private Treatment propose(String template) {
        return treatments.add(Treatment.from(TreatmentTemplates.get(template), visit.id()), List.of());
    }

    void agree(@Nullable Money ceiling, Treatment... accepted) {
        Set<Long> ids = java.util.Arrays.stream(accepted).map(Treatment::id).collect(Collectors.toSet());
        agreements.agree(new Consent(visit.id(), ids, TODAY, "Ilse Tamm", Means.IN_PERSON, ceiling, null, "", "Ines"));
    }

    /** Writes minutes for the first step of a treatment. */
    void work(Treatment treatment, int minutes) {
        Step step = steps.list(visit.id()).stream()
                .filter(it -> it.treatmentId() != null && it.treatmentId() == treatment.id())
                .findFirst()
                .orElseThrow();
        diary.write(Writing.done(step, clock.instant(), minutes, "Ines"), clock.instant());
    }

    BillingCase billing() {
        return cases.of(visit.id());
    }

    static InvoiceLine line(String title, long minor, int permille) {
        return new InvoiceLine(0, 0, null, title, null, new Money(minor), permille);
    }

    InvoiceDraft draft(Rounding rounding, InvoiceLine... lines) {
        return new InvoiceDraft(
                visit.id(),
                null,
                TODAY,
                "Workshop on the Mill Race\n12 Mill Race",
                "TN 4711",
                "Ilse Tamm\n7 Weir Street",
                "Cello, unlabelled, visit 2026-001",
                "EUR",
                rounding,
                List.of(lines),
                Money.NOTHING,
                "Within 14 days.",
                "",
                "",
                "Ines");
    }

    OpenedDesk open() {
        Frames frames = new Frames(settings);
        return OpenedDesk.with(
                new InvoicePages(frames, cases, invoices, rules, papers, clock),
                new InstrumentPages(frames, owners, instruments, visits, List.of(new InvoiceChapter(invoices))));
    }
}
