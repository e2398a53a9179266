package afterlength.workshop.work;

import org.jspecify.annotations.Nullable;

/**
 * A piece of work as it is kept: hands-on minutes, then a wait in calendar hours during which glue sets or varnish dries. Each of
 * the two has a low, a usual and a high figure; they are what the restorer expects, not what was measured.
 *
 * @param treatmentId the agreed treatment it belongs to; null for a step the restorer added beside the agreement
 * @param position its place in the order of the visit, from 1
 * @param needs what must be at hand, in words with commas between: "hot glue, clamp"
 * @param blocksInstrument whether nothing else may be done to the instrument during the wait
 * @param standing whether it is in the order; a dropped step can be taken back
 */
public record Step(
        long id,
        long visitId,
        @Nullable Long treatmentId,
        int position,
        String name,
        int handsLowMin,
        int handsTypicalMin,
        int handsHighMin,
        double waitLowH,
        double waitTypicalH,
        double waitHighH,
        String needs,
        boolean blocksInstrument,
        Standing standing,
        int version) {

    /** Whether a step is in the order, and if not, who took it out. */
    public enum Standing {
        IN_ORDER,
        DROPPED_BY_HAND,
        DROPPED_BY_AGREEMENT
    }

    public boolean dropped() {
        return standing != Standing.IN_ORDER;
    }

    public boolean waits() {
        return waitTypicalH > 0;
    }

    boolean isOf(long treatment) {
        return treatmentId != null && treatmentId == treatment;
    }

    /** Whether both belong to the same agreed treatment, so that the later one builds on the earlier. */
    boolean sameTreatment(Step other) {
        return treatmentId != null && treatmentId.equals(other.treatmentId);
    }
}
