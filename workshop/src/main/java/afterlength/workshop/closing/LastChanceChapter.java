package afterlength.workshop.closing;

import afterlength.workshop.agreement.AgreementStore;
import afterlength.workshop.agreement.TreatmentStore;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.Visit;
import gg.jte.Content;

/** What is still to be recorded, on the instrument's page. */
public final class LastChanceChapter implements Chapter {
    private final AgreementStore agreements;
    private final TreatmentStore treatments;
    private final TickStore ticks;

    public LastChanceChapter(AgreementStore agreements, TreatmentStore treatments, TickStore ticks) {
        this.agreements = agreements;
        this.treatments = treatments;
        this.ticks = ticks;
    }

    @Override
    public String name() {
        return "Before closing";
    }

    @Override
    public Content about(Visit visit) {
        return Templates.part(new LastChanceSummary(
                visit.id(), LastChance.of(visit.id(), agreements, treatments, ticks.latest(visit.id()))));
    }
}
