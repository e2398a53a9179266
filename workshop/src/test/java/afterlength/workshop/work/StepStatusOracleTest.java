package afterlength.workshop.work;

import static afterlength.workshop.work.Told.after;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Where a step stands under random diaries: against a second way that reads the diary backwards, and against laws that hold for every
 * diary.
 */
class StepStatusOracleTest {
    private static final int DIARIES = 4000;

    @Test
    void readingBackwardsGivesTheSame() {
        for (long seed = 0; seed < DIARIES; seed++) {
            RandomDiary diary = new RandomDiary(seed);
            for (Instant at : diary.moments()) {
                assertThat(StepStatus.of(diary.step, diary.entries, at))
                        .as("seed %d at %s", seed, at)
                        .isEqualTo(backwards(diary.step, diary.entries, at));
            }
        }
    }

    @Test
    void theOrderInWhichEntriesAreHandedOverDoesNotMatter() {
        for (long seed = 0; seed < DIARIES; seed++) {
            RandomDiary diary = new RandomDiary(seed);
            List<DiaryEntry> shuffled = new ArrayList<>(diary.entries);
            Collections.shuffle(shuffled, new Random(seed));
            assertThat(StepStatus.of(diary.step, shuffled, after(500)))
                    .as("seed %d", seed)
                    .isEqualTo(StepStatus.of(diary.step, diary.entries, after(500)));
        }
    }

    @Test
    void notesAndOtherStepsChangeNothing() {
        Step other = Told.step(2, 1L, 5, true);
        for (long seed = 0; seed < DIARIES; seed++) {
            RandomDiary diary = new RandomDiary(seed);
            List<DiaryEntry> more = new ArrayList<>(diary.entries);
            more.add(Told.entry(900, Writing.started(other, after(1), "h")));
            more.add(Told.entry(901, Writing.note(1, after(2), "h", "a note")));
            for (Instant at : diary.moments()) {
                assertThat(StepStatus.of(diary.step, more, at))
                        .as("seed %d at %s", seed, at)
                        .isEqualTo(StepStatus.of(diary.step, diary.entries, at));
            }
        }
    }

    @Test
    void aWaitRunsOutAtItsEndAndNotBefore() {
        for (long seed = 0; seed < DIARIES; seed++) {
            RandomDiary diary = new RandomDiary(seed);
            Instant end = after(400);
            if (StepStatus.of(diary.step, diary.entries, end) instanceof StepStatus.Waiting waiting) {
                assertThat(StepStatus.of(
                                diary.step, diary.entries, waiting.until().minusSeconds(1)))
                        .as("seed %d", seed)
                        .isEqualTo(waiting);
                assertThat(StepStatus.of(diary.step, diary.entries, waiting.until()))
                        .as("seed %d", seed)
                        .isEqualTo(new StepStatus.Finished(waiting.doneAt(), waiting.until()));
            }
        }
    }

    @Test
    void oneMoreNotDryNeverMakesAStepFreeEarlier() {
        for (long seed = 0; seed < DIARIES; seed++) {
            RandomDiary diary = new RandomDiary(seed);
            List<DiaryEntry> more = new ArrayList<>(diary.entries);
            more.add(Told.entry(900, Writing.notDry(diary.step, after(410), 0.25 + seed % 50, "h")));
            assertThat(freeAt(StepStatus.of(diary.step, more, after(410))))
                    .as("seed %d", seed)
                    .isAfterOrEqualTo(freeAt(StepStatus.of(diary.step, diary.entries, after(410))));
        }
    }

    private static Instant freeAt(StepStatus status) {
        if (status instanceof StepStatus.Waiting waiting) {
            return waiting.until();
        }
        return status instanceof StepStatus.Finished finished ? finished.freeAt() : Instant.MAX;
    }

    /** From the end: the last start or done decides; then every “not dry” since then may push the end outwards. */
    private static StepStatus backwards(Step step, List<DiaryEntry> entries, Instant at) {
        List<Writing> until = entries.stream()
                .map(DiaryEntry::writing)
                .filter(writing -> !writing.at().isAfter(at))
                .toList();
        for (int last = until.size() - 1; last >= 0; last--) {
            Writing writing = until.get(last);
            if (writing.what() == DiaryEvent.STARTED) {
                return new StepStatus.Begun(writing.at());
            }
            if (writing.what() == DiaryEvent.DONE) {
                Instant free = latest(step, writing, until.subList(last + 1, until.size()));
                return free.isAfter(at)
                        ? new StepStatus.Waiting(writing.at(), free)
                        : new StepStatus.Finished(writing.at(), free);
            }
        }
        return new StepStatus.NotBegun();
    }

    private static Instant latest(Step step, Writing done, List<Writing> since) {
        Instant free = done.at().plusSeconds(Math.round(step.waitTypicalH() * 3600));
        for (Writing writing : since) {
            if (writing.what() == DiaryEvent.NOT_DRY && writing.moreHours() != null) {
                Instant asked = writing.at().plusSeconds(Math.round(writing.moreHours() * 3600));
                free = asked.isAfter(free) ? asked : free;
            }
        }
        return free;
    }

    /** Up to twelve entries in the order of time, some in the same second. */
    private static final class RandomDiary {
        final Step step;
        final List<DiaryEntry> entries = new ArrayList<>();

        RandomDiary(long seed) {
            SplittableRandom random = new SplittableRandom(seed);
            step = Told.step(1, 1L, random.nextBoolean() ? 0 : random.nextInt(1, 200) / 2.0, random.nextBoolean());
            Instant at = after(0);
            int count = random.nextInt(13);
            for (int n = 1; n <= count; n++) {
                at = at.plus(Duration.ofMinutes(random.nextInt(4) == 0 ? 0 : random.nextInt(1500)));
                entries.add(Told.entry(n, writing(random, at)));
            }
        }

        private Writing writing(SplittableRandom random, Instant at) {
            return switch (random.nextInt(4)) {
                case 0 -> Writing.started(step, at, "h");
                case 1 -> Writing.done(step, at, random.nextInt(100), "h");
                case 2 -> Writing.notDry(step, at, random.nextInt(1, 400) / 4.0, "h");
                default -> new Writing(1, step.id(), DiaryEvent.NOTE, at, null, null, "h", "", "", "a note");
            };
        }

        /** Just before, at and just after every entry, and long after the last. */
        List<Instant> moments() {
            List<Instant> moments = new ArrayList<>(List.of(after(-1), after(5000)));
            entries.forEach(entry -> {
                moments.add(entry.writing().at().minusSeconds(1));
                moments.add(entry.writing().at());
                moments.add(entry.writing().at().plusSeconds(1));
            });
            return moments;
        }
    }
}
