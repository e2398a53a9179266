package afterlength.workshop.agreement;

import afterlength.craft.units.Money;
import afterlength.workshop.desk.Frames;
import afterlength.workshop.desk.OpenedDesk;
import afterlength.workshop.examination.Answer;
import afterlength.workshop.examination.CalibratedCameraStore;
import afterlength.workshop.examination.CardPrintStore;
import afterlength.workshop.examination.CardSearches;
import afterlength.workshop.examination.Finding;
import afterlength.workshop.examination.FindingAge;
import afterlength.workshop.examination.FindingStore;
import afterlength.workshop.examination.MarkStore;
import afterlength.workshop.examination.PhotographStore;
import afterlength.workshop.examination.TracedMarks;
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
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.ledger.ShopFolder;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A real shop with one old viola in it, on 4 November 2026: an open seam, a wing crack, a chip in the varnish. */
final class OldViola {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 4);
    static final Settings SETTINGS = new Settings(
            "Workshop on the Mill Race",
            "12 Mill Race",
            List.of("Ines"),
            "EUR",
            new Money(6800),
            190,
            false,
            java.time.LocalTime.of(17, 30),
            false);

    final Clock clock = Clock.fixed(Instant.parse("2026-11-04T10:00:00Z"), ZoneOffset.UTC);
    final Ledger ledger;
    final SettingsStore settings;
    final OwnerStore owners;
    final InstrumentStore instruments;
    final VisitStore visits;
    final FindingStore findings;
    final FindingLines findingLines;
    final TreatmentStore treatments;
    final AgreementStore agreements;
    final Proposals proposals;
    final Visit visit;
    final long seam;
    final long crack;
    final long chip;

    OldViola(Path folder, AfterAgreement... afterwards) {
        ledger = Ledger.open(ShopFolder.open(folder));
        settings = new SettingsStore(ledger);
        settings.put(SETTINGS);
        owners = new OwnerStore(ledger);
        instruments = new InstrumentStore(ledger);
        visits = new VisitStore(ledger);
        findings = new FindingStore(ledger);
        findingLines = new FindingLines(findings);
        treatments = new TreatmentStore(ledger);
        agreements = new AgreementStore(ledger, settings, clock, List.of(afterwards));
        proposals = new Proposals(
                settings, owners, instruments, visits, findingLines, treatments, agreements, ReadyBy.NOT_PLANNED);
        visit = visits.receive(new Arrival(
                new Owner(0, "Ilse Tamm", "", "", "", "", 1),
                new Instrument(0, 0, InstrumentKind.VIOLA, "Viola, about 1905", "", "", "", "", null, "", "", null, 1),
                new Visit(0, 0, "", TODAY.minusDays(9), "", "It buzzes.", "", "", "", null, null, 1)));
        seam = found("top", "open seam (top)", "lower bout", 84.0, Answer.YES);
        crack = found("top", "wing crack", "treble side", 31.0, Answer.NO);
        chip = found("varnish", "chipped varnish", "back", 12.0, Answer.NO);
    }

    TracedMarks traced(Path folder) {
        return new TracedMarks(
                new PhotographStore(ledger),
                new MarkStore(ledger),
                new CardSearches(
                        new Photographs(ShopFolder.open(folder)),
                        new CardPrintStore(ledger),
                        new CalibratedCameraStore(ledger)));
    }

    private long found(String part, String kind, String place, double size_mm, Answer hinders) {
        return findings.add(finding(null, part, kind, place, size_mm, hinders), List.of());
    }

    Finding finding(@Nullable Long replaces, String part, String kind, String place, double size_mm, Answer hinders) {
        Instant seen = clock.instant();
        return new Finding(
                0,
                visit.id(),
                replaces,
                false,
                part,
                kind,
                place,
                size_mm,
                2.0,
                "",
                FindingAge.OLD,
                hinders,
                Answer.NO,
                "",
                "",
                seen,
                "Ines",
                seen);
    }

    Treatment propose(String template, Long... findingIds) {
        return treatments.add(Treatment.from(TreatmentTemplates.get(template), visit.id()), Arrays.asList(findingIds));
    }

    /** Seam in playing order, studs from sound on, retouch from full on. */
    List<Treatment> proposeOneOfEachTier() {
        return List.of(
                propose("seam", seam), propose("studs-through-sound-hole", crack), propose("retouch-spirit", chip));
    }

    Agreement agree(Treatment... accepted) {
        Set<Long> ids = Set.copyOf(Arrays.stream(accepted).map(Treatment::id).toList());
        return agreements.agree(new Consent(visit.id(), ids, TODAY, "Ilse Tamm", Means.LETTER, null, null, "", "Ines"));
    }

    Proposal proposal() {
        return proposals.of(visit.id());
    }

    OpenedDesk open() {
        Frames frames = new Frames(settings);
        return OpenedDesk.with(
                new TreatmentPages(frames, settings, visits, findingLines, treatments),
                new AgreementPages(frames, proposals, treatments, agreements, clock),
                new InstrumentPages(frames, owners, instruments, visits, List.of(new AgreementChapter(proposals))));
    }
}
