package afterlength.workshop.agreement;

import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.paper.PaperDocument;
import afterlength.workshop.paper.PaperPdf;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.RunningWords;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** The proposal for the owner to read, choose from and sign; once agreed, it also shows what was agreed. */
record ProposalPaper(Proposal proposal) {

    static byte[] pdf(Proposal proposal, LocalDate day) {
        return PaperPdf.of(document(proposal, day));
    }

    static PaperDocument document(Proposal proposal, LocalDate day) {
        return new PaperDocument(
                "Proposal",
                "en",
                proposal.settings().letterPaper() ? PaperSize.LETTER : PaperSize.A4,
                RunningWords.english(
                        proposal.instrument().name() + ", visit "
                                + proposal.visit().number(),
                        Days.words(day)),
                Templates.text(new ProposalPaper(proposal)),
                Map.of());
    }

    /** The ways that differ from each other, to leave it as it is among them. */
    List<ScopeOffer> offers() {
        return proposal.offers().list().stream().filter(ScopeOffer::differs).toList();
    }

    /** What cannot be undone, or only in part, whatever the owner chooses. */
    List<Treatment> notFullyUndone() {
        return proposal.treatments().stream()
                .filter(treatment -> treatment.undoing() != Undoing.YES)
                .toList();
    }
}
