package afterlength.workshop.examination;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Something seen: on which part, of what kind, where, how large. What was observed stands apart from what it is taken to mean.
 *
 * @param replaces the entry that this one corrects or withdraws
 * @param sizePlusMinusMm there whenever the size is
 * @param hand who saw it
 * @param writtenAt when this wording was written; a correction is written later than it was seen
 * @param sizeReason why there is no size; empty when there is one, or when nobody said
 */
public record Finding(
        long id,
        long visitId,
        @Nullable Long replaces,
        boolean withdrawn,
        String part,
        String kind,
        String place,
        @Nullable Double sizeMm,
        @Nullable Double sizePlusMinusMm,
        String sizeReason,
        FindingAge age,
        Answer hindersPlaying,
        Answer getsWorse,
        String observation,
        String interpretation,
        Instant seenAt,
        String hand,
        Instant writtenAt)
        implements Written {
    public Finding {
        if (part.isBlank() || kind.isBlank()) {
            throw new IllegalArgumentException("a finding names a part and a kind");
        }
        if (sizeMm != null && sizePlusMinusMm == null) {
            throw new IllegalArgumentException("the size " + sizeMm + " mm of a finding has no ±");
        }
    }

    /** "wing crack, top". */
    public String title() {
        return kind + ", " + part;
    }

    /** A finding without place, or without size or a reason for none, is not finished. */
    public boolean draft() {
        return !missing().isEmpty();
    }

    /** What a draft still lacks. */
    List<String> missing() {
        List<String> missing = new ArrayList<>();
        if (place.isBlank()) {
            missing.add("its place");
        }
        if (sizeMm == null && sizeReason.isBlank()) {
            missing.add("its size, or the reason why it has none");
        }
        return missing;
    }

    /** What is said, without when it was written. */
    Finding words() {
        return again(0, false, Instant.EPOCH);
    }

    /** The same words with another size, as a new entry that replaces this one. */
    Finding sized(@Nullable Double mm, @Nullable Double plusMinus_mm, Instant at) {
        return entry(id, false, mm, plusMinus_mm, mm == null ? sizeReason : "", at);
    }

    /** The same words as a new entry that replaces an earlier one. */
    Finding again(long replaced, boolean nowWithdrawn, Instant at) {
        return entry(replaced, nowWithdrawn, sizeMm, sizePlusMinusMm, sizeReason, at);
    }

    private Finding entry(
            long replaced,
            boolean nowWithdrawn,
            @Nullable Double mm,
            @Nullable Double plusMinus_mm,
            String reason,
            Instant at) {
        return new Finding(
                0,
                visitId,
                replaced,
                nowWithdrawn,
                part,
                kind,
                place,
                mm,
                plusMinus_mm,
                reason,
                age,
                hindersPlaying,
                getsWorse,
                observation,
                interpretation,
                seenAt,
                hand,
                at);
    }
}
