package afterlength.workshop.agreement;

import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import java.time.LocalDate;
import java.util.List;

/** Gathers a visit's proposal from the stores. */
public final class Proposals {
    private final SettingsStore settings;
    private final OwnerStore owners;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final FindingLines findings;
    private final TreatmentStore treatments;
    private final AgreementStore agreements;

    public Proposals(
            SettingsStore settings,
            OwnerStore owners,
            InstrumentStore instruments,
            VisitStore visits,
            FindingLines findings,
            TreatmentStore treatments,
            AgreementStore agreements) {
        this.settings = settings;
        this.owners = owners;
        this.instruments = instruments;
        this.visits = visits;
        this.findings = findings;
        this.treatments = treatments;
        this.agreements = agreements;
    }

    Proposal of(long visitId) {
        return of(visits.get(visitId));
    }

    Proposal of(Visit visit) {
        Settings now = settings.get();
        Instrument instrument = instruments.get(visit.instrumentId());
        List<Treatment> lines = treatments.listOf(visit.id());
        return new Proposal(
                visit,
                instrument,
                owners.get(instrument.ownerId()),
                now,
                findings.listNow(visit.id()),
                lines,
                treatments.listAnswers(visit.id()),
                Offers.of(lines, now),
                agreements.listOf(visit.id()).stream().map(this::withLines).toList());
    }

    private Agreed withLines(Agreement agreement) {
        return new Agreed(agreement, agreements.listLines(agreement.id()));
    }

    /** The proposal of a visit on paper, as it stands on this day. */
    public byte[] pdf(long visitId, LocalDate day) {
        return ProposalPaper.pdf(of(visitId), day);
    }
}
