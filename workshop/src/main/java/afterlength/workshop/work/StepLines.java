package afterlength.workshop.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Lays the steps of a visit out as lines, with the treatment's title where a new one begins. */
final class StepLines {
    private StepLines() {}

    static List<StepLine> of(VisitWork work, List<DiaryEntry> diary, Map<Long, String> titles) {
        List<StepLine> lines = new ArrayList<>();
        String before = "";
        Step next = work.turn() instanceof Turn.Next turn ? turn.step() : null;
        for (StepNow step : work.steps()) {
            String title = title(step.step(), titles);
            lines.add(new StepLine(
                    step.step(),
                    step.status(),
                    title.equals(before) ? "" : title,
                    step.step().equals(next),
                    nameMaterial(step, diary)));
            before = title;
        }
        return lines;
    }

    static String title(Step step, Map<Long, String> titles) {
        return step.treatmentId() == null
                ? "Beside the agreement"
                : titles.getOrDefault(step.treatmentId(), "A treatment taken out of the proposal");
    }

    private static boolean nameMaterial(StepNow step, List<DiaryEntry> diary) {
        boolean done = step.status() instanceof StepStatus.Waiting || step.status() instanceof StepStatus.Finished;
        return done
                && EntryWords.wantsMaterial(step.step())
                && diary.stream()
                        .noneMatch(entry -> entry.isAbout(step.step())
                                && !entry.writing().material().isEmpty());
    }
}
