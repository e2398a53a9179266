package afterlength.workshop.agreement;

import afterlength.craft.estimate.WorkEstimate;

/**
 * Hands-on minutes of a line or a scope: one in ten runs of the simulation stays below the low end, one in ten goes above the
 * high end. Ends are rounded outward to the whole minute.
 */
public record WorkSpan(long low_min, long expected_min, long high_min) {
    static final double LOW_SHARE = 0.10;
    static final double HIGH_SHARE = 0.90;
    static final WorkSpan NOTHING = new WorkSpan(0, 0, 0);

    static WorkSpan of(WorkEstimate estimate) {
        return of(estimate, Math.round(estimate.expected_min()));
    }

    /** With the expected minutes of the lines as they were rounded, so that they add up. */
    static WorkSpan of(WorkEstimate estimate, long expected_min) {
        return new WorkSpan((long) Math.floor(estimate.point_min(LOW_SHARE)), expected_min, (long)
                Math.ceil(estimate.point_min(HIGH_SHARE)));
    }
}
