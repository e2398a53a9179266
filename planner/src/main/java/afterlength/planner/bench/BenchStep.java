package afterlength.planner.bench;

import java.util.List;

/**
 * One piece of work: a person's hands for a while without a break, then a wait in calendar time while the person is free.
 *
 * @param hands minutes of one person, inside one stretch of working hours
 * @param waits minutes afterwards during which it dries or sets, nights and Sundays included
 * @param persons who may do it, as a bit set
 * @param samePersonAs the step that the same person has to do, or -1
 * @param holdsInstrument whether nothing else that holds the instrument may go on until the end of the wait
 * @param clamp kind of clamp held from the start to the end of the wait, or -1
 * @param cupboard places in the drying cupboard held during the wait
 * @param hotGlue whether it must lie inside a half-day on which the pot is hot
 * @param after the steps that must have ended, their wait included
 * @param maxLagFrom the step after whose start this one must start within {@code maxLag}, or -1
 */
public record BenchStep(
        int id,
        int job,
        String name,
        int hands,
        int waits,
        int persons,
        int samePersonAs,
        boolean holdsInstrument,
        int clamp,
        int clampQty,
        int cupboard,
        boolean hotGlue,
        List<Integer> after,
        int maxLagFrom,
        int maxLag) {
    public BenchStep {
        after = List.copyOf(after);
    }

    /** Minutes from its start until the next may begin. */
    public int length() {
        return hands + waits;
    }
}
