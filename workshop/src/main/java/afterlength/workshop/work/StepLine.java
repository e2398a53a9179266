package afterlength.workshop.work;

import java.time.Instant;

/**
 * A step as a line of the work page.
 *
 * @param heading the treatment that begins with this line, empty when it goes on
 * @param next whether it is the one to begin now
 * @param nameMaterial whether it is done and wants a material that the diary does not name
 */
record StepLine(Step step, StepStatus status, String heading, boolean next, boolean nameMaterial) {
    boolean begun() {
        return status instanceof StepStatus.Begun;
    }

    boolean open() {
        return begun() || status instanceof StepStatus.NotBegun;
    }

    boolean notBegun() {
        return status instanceof StepStatus.NotBegun;
    }

    boolean mayStillBeWet() {
        return !open() && step.waits();
    }

    String statusWords(Instant now) {
        return StepWords.status(status, now);
    }
}
