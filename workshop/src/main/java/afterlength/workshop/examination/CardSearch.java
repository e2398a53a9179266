package afterlength.workshop.examination;

import afterlength.sight.measure.MeasuredPhoto;
import afterlength.sight.measure.PhotoAnswer;
import afterlength.sight.measure.Progress;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One search for the card in one photograph: how far it is, whether it is still wanted, and how it ended. */
final class CardSearch implements Progress {
    private volatile @Nullable Step step;
    private volatile boolean cancelled;
    private volatile @Nullable CardColours colours;
    private volatile @Nullable LensLine lens;
    private volatile @Nullable PhotoAnswer answer;

    @Override
    public void at(Step now) {
        step = now;
    }

    @Override
    public boolean cancelled() {
        return cancelled;
    }

    void cancel() {
        cancelled = true;
    }

    /** Told before the end. */
    void see(CardColours seen, LensLine with) {
        colours = seen;
        lens = with;
    }

    Optional<LensLine> findLens() {
        return Optional.ofNullable(lens);
    }

    Optional<CardColours> findColours() {
        return Optional.ofNullable(colours);
    }

    void end(PhotoAnswer how) {
        answer = how;
    }

    boolean working() {
        return answer == null;
    }

    Optional<PhotoAnswer> findAnswer() {
        return Optional.ofNullable(answer);
    }

    Optional<MeasuredPhoto> findMeasured() {
        return answer instanceof MeasuredPhoto photo ? Optional.of(photo) : Optional.empty();
    }

    /** What is being done, as a sentence. */
    String progressWords() {
        Step now = step;
        if (cancelled) {
            return "The search is being stopped after the step it is in.";
        }
        if (now == null) {
            return "The search for a card in this picture waits for its turn.";
        }
        return switch (now) {
            case READING -> "Step 1 of 3: the picture is being read.";
            case FINDING -> "Step 2 of 3: the corners of a card are being looked for.";
            case FITTING, DONE -> "Step 3 of 3: the camera is being solved from the card.";
        };
    }
}
