package afterlength.workshop.work;

import java.util.List;
import java.util.Objects;

/** The work of one visit as the instrument's page tells it. */
record WorkPart(long visitId, Sentence sentence, List<DiaryEntry> diary) {
    /** A start is told by what was done; it stands alone only while nothing is done yet. */
    List<DiaryEntry> told() {
        return diary.stream()
                .filter(entry -> entry.writing().what() != DiaryEvent.STARTED || !doneLater(entry))
                .toList();
    }

    private boolean doneLater(DiaryEntry start) {
        return diary.stream()
                .anyMatch(entry -> entry.writing().what() == DiaryEvent.DONE
                        && Objects.equals(
                                entry.writing().stepId(), start.writing().stepId())
                        && !entry.writing().at().isBefore(start.writing().at()));
    }
}
