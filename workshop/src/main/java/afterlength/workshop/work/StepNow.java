package afterlength.workshop.work;

/** A step with where it stands. */
public record StepNow(Step step, StepStatus status) {}
