package afterlength.workshop.agreement;

import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;

/** Gathers a visit's proposal from the stores. */
public final class Proposals {
    private final SettingsStore settings;
    private final OwnerStore owners;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final FindingLines findings;
    private final TreatmentStore treatments;
    private final AgreementStore agreements;
    private final ReadyBy readyBy;

    public Proposals(
            SettingsStore settings,
            OwnerStore owners,
            InstrumentStore instruments,
            VisitStore visits,
            FindingLines findings,
            TreatmentStore treatments,
            AgreementStore agreements,
            ReadyBy readyBy) {
        this.settings = settings;
        this.owners = owners;
        this.instruments = instruments;
        this.visits = visits;
        this.findings = findings;
        this.treatments = treatments;
        this.agreements = agreements;
        this.readyBy = readyBy;
    }

    Proposal of(long visitId) {
        return of(visits.get(visitId));
    }

    Proposal of(Visit visit) {
        return of(visit, this::ready);
    }

    /** Without when each way would be ready, which takes longest. */
    Proposal withoutDays(Visit visit) {
        return of(visit, (same, offers) -> Map.of());
    }

    private Proposal of(Visit visit, BiFunction<Visit, Offers, Map<Scope, ReadySpan>> ready) {
        Settings now = settings.get();
        Instrument instrument = instruments.get(visit.instrumentId());
        List<Treatment> lines = treatments.listOf(visit.id());
        Offers offers = Offers.of(lines, now);
        return new Proposal(
                visit,
                instrument,
                owners.get(instrument.ownerId()),
                now,
                findings.listNow(visit.id()),
                lines,
                treatments.listAnswers(visit.id()),
                offers,
                ready.apply(visit, offers),
                agreements.listOf(visit.id()).stream().map(this::withLines).toList());
    }

    private Map<Scope, ReadySpan> ready(Visit visit, Offers offers) {
        Map<Scope, ReadySpan> ready = new EnumMap<>(Scope.class);
        List<ScopeOffer> ahead =
                offers.list().stream().filter(ScopeOffer::hasWorkAhead).toList();
        if (ahead.isEmpty()) {
            return ready;
        }
        Iterator<Optional<ReadySpan>> spans = readyBy.of(
                        visit, ahead.stream().map(ScopeOffer::lines).toList())
                .iterator();
        ahead.forEach(offer -> spans.next().ifPresent(span -> ready.put(offer.scope(), span)));
        return ready;
    }

    private Agreed withLines(Agreement agreement) {
        return new Agreed(agreement, agreements.listLines(agreement.id()));
    }

    /** The proposal of a visit on paper, as it stands on this day. */
    public byte[] pdf(long visitId, LocalDate day) {
        return ProposalPaper.pdf(of(visitId), day);
    }
}
