package afterlength.sight.measure;

import static org.assertj.core.api.Assertions.assertThat;

import afterlength.sight.card.Card;
import afterlength.sight.picture.PictureFile;
import afterlength.sight.rendered.Renderer;
import afterlength.sight.rendered.Scene;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ProgressTest {
    private static final PictureFile FILE = new PictureFile(
            "photo.jpg", Renderer.jpeg(Scene.of(Card.POCKET, 1200, Scene.Camera.over(Card.POCKET, 20, 70, 260)), 9));

    /** Writes every step down, and stops at one. */
    private static final class Stopping implements Progress {
        private final Step last;
        private final List<Step> seen = new ArrayList<>();

        Stopping(Step last) {
            this.last = last;
        }

        @Override
        public void at(Step step) {
            seen.add(step);
        }

        @Override
        public boolean cancelled() {
            return seen.get(seen.size() - 1) == last;
        }
    }

    private static PhotoAnswer measured(Progress progress) {
        return PhotoMeasuring.of(FILE, PhotoRequest.of("pocket", Taken.EXACT), progress);
    }

    @ParameterizedTest
    @EnumSource(
            value = Progress.Step.class,
            names = {"READING", "FINDING", "FITTING"})
    void itStopsBeforeTheStepAtWhichNobodyWantsItAnyMore(Progress.Step last) {
        Stopping progress = new Stopping(last);
        assertThat(measured(progress)).isEqualTo(new PhotoAnswer.Cancelled());
        assertThat(progress.seen).endsWith(last).doesNotHaveDuplicates();
    }

    @Test
    void everyStepIsTold() {
        Stopping progress = new Stopping(Progress.Step.DONE);
        assertThat(measured(progress)).isInstanceOf(MeasuredPhoto.class);
        assertThat(progress.seen).containsExactly(Progress.Step.values());
    }
}
