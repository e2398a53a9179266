package afterlength.workshop.invoice;

import afterlength.workshop.agreement.Agreement;
import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.instrument.Instrument;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.OwnerStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.instrument.VisitStore;
import afterlength.workshop.ledger.SettingsStore;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Gathers what a bill is made from. */
public final class BillingCases {
    private final SettingsStore settings;
    private final OwnerStore owners;
    private final InstrumentStore instruments;
    private final VisitStore visits;
    private final AgreementStore agreements;
    private final OfferedLines offered;
    private final InvoiceStore invoices;
    private final InvoiceRulesStore rules;

    public BillingCases(
            SettingsStore settings,
            OwnerStore owners,
            InstrumentStore instruments,
            VisitStore visits,
            AgreementStore agreements,
            OfferedLines offered,
            InvoiceStore invoices,
            InvoiceRulesStore rules) {
        this.settings = settings;
        this.owners = owners;
        this.instruments = instruments;
        this.visits = visits;
        this.agreements = agreements;
        this.offered = offered;
        this.invoices = invoices;
        this.rules = rules;
    }

    BillingCase of(long visitId) {
        Visit visit = visits.get(visitId);
        Instrument instrument = instruments.get(visit.instrumentId());
        Agreement agreement = agreements.findNow(visitId).orElse(null);
        List<Billed> bills =
                invoices.listOf(visitId).stream().map(invoices::billed).toList();
        return new BillingCase(
                visit,
                instrument,
                owners.get(instrument.ownerId()),
                settings.get(),
                rules.get(),
                agreement,
                agreement == null ? List.of() : offered.list(agreement, bills),
                agreement == null ? 0 : offered.minutesBeside(agreement),
                bills);
    }

    /** The bill that the agreement and the diary lead to, as the form offers it; empty when nothing of it was done. */
    public Optional<InvoiceDraft> findOffered(long visitId, LocalDate suppliedOn, String hand) {
        BillingCase it = of(visitId);
        return it.offered().stream().anyMatch(OfferedLine::proposed)
                ? Optional.of(InvoiceForm.draft(it, suppliedOn, hand))
                : Optional.empty();
    }
}
