package afterlength.workshop.examination;

/** Gathers the corrections of a visit, for any paper that shows findings or measures. */
public final class CorrectionBook {
    private final FindingStore findings;
    private final MeasureStore measures;

    public CorrectionBook(FindingStore findings, MeasureStore measures) {
        this.findings = findings;
        this.measures = measures;
    }

    public Corrections of(long visitId) {
        return Corrections.of(findings.listHistories(visitId), measures.listHistories(visitId));
    }
}
