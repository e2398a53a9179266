package afterlength.workshop.agreement;

/** Whether a template is a treatment, or the work around every job, which is often forgotten in a price. */
public enum JobPart {
    /** Done before the owner agrees: receiving, examining, proposing. It has a price but makes no steps any more. */
    BEFORE,
    /** Playing, report and handover, once the treatments are done. */
    AROUND,
    TREATMENT;

    boolean treatsTheInstrument() {
        return this == TREATMENT;
    }
}
