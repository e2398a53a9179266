package afterlength.workshop.work;

/** A step that dries or is clamped, and whose instrument it is. */
record Drying(HouseVisit visit, Step step, StepStatus.Waiting status) {}
