package afterlength.workshop.agreement;

/** That a treatment is meant for a finding; the finding is named as it stands now, whatever it was called when they were joined. */
public record AnsweredFinding(long treatmentId, long findingId) {}
