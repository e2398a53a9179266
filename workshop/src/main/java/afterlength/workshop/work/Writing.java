package afterlength.workshop.work;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * What a person writes into the diary: when it was, whose hand, with what.
 *
 * @param stepId the step it is about; only a note may stand without one
 * @param minutes hands-on minutes, when known
 * @param moreHours for {@link DiaryEvent#NOT_DRY}: how long to wait from then on
 * @param material in words, with its batch; empty when none was named
 * @param reversibleWith what undoes the material
 */
public record Writing(
        long visitId,
        @Nullable Long stepId,
        DiaryEvent what,
        Instant at,
        @Nullable Integer minutes,
        @Nullable Double moreHours,
        String hand,
        String material,
        String reversibleWith,
        String remark) {

    public Writing {
        at = at.truncatedTo(ChronoUnit.SECONDS);
        if (stepId == null && what != DiaryEvent.NOTE) {
            throw new IllegalArgumentException("only a note stands without a step");
        }
        if ((what == DiaryEvent.NOT_DRY) != (moreHours != null)) {
            throw new IllegalArgumentException("further hours belong to “not dry” and to nothing else");
        }
        if (minutes != null && (what == DiaryEvent.STARTED || what == DiaryEvent.NOT_DRY)) {
            throw new IllegalArgumentException("minutes belong to what is done or to a note");
        }
    }

    public static Writing started(Step step, Instant at, String hand) {
        return of(step, DiaryEvent.STARTED, at, null, null, hand);
    }

    public static Writing done(Step step, Instant at, @Nullable Integer minutes, String hand) {
        return of(step, DiaryEvent.DONE, at, minutes, null, hand);
    }

    public static Writing notDry(Step step, Instant at, double moreHours, String hand) {
        return of(step, DiaryEvent.NOT_DRY, at, null, moreHours, hand);
    }

    public static Writing note(long visitId, Instant at, String hand, String remark) {
        return new Writing(visitId, null, DiaryEvent.NOTE, at, null, null, hand, "", "", remark);
    }

    public Writing with(Material used) {
        return withMaterial(used.words(), used.reversibleWith());
    }

    public Writing withMaterial(String words, String undoneWith) {
        return new Writing(visitId, stepId, what, at, minutes, moreHours, hand, words, undoneWith, remark);
    }

    public Writing withRemark(String words) {
        return new Writing(visitId, stepId, what, at, minutes, moreHours, hand, material, reversibleWith, words);
    }

    Writing withMinutes(@Nullable Integer counted) {
        return new Writing(visitId, stepId, what, at, counted, moreHours, hand, material, reversibleWith, remark);
    }

    private static Writing of(
            Step step,
            DiaryEvent what,
            Instant at,
            @Nullable Integer minutes,
            @Nullable Double moreHours,
            String hand) {
        return new Writing(step.visitId(), step.id(), what, at, minutes, moreHours, hand, "", "", "");
    }
}
