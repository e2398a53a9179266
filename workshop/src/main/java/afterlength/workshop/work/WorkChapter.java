package afterlength.workshop.work;

import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.Visit;
import gg.jte.Content;
import java.time.Clock;
import java.time.Instant;
import java.util.List;

/** What was done when, and what is next. */
public final class WorkChapter implements Chapter {
    private final StepStore steps;
    private final DiaryStore diary;
    private final Clock clock;

    public WorkChapter(StepStore steps, DiaryStore diary, Clock clock) {
        this.steps = steps;
        this.diary = diary;
        this.clock = clock;
    }

    @Override
    public String name() {
        return "Work";
    }

    @Override
    public Content about(Visit visit) {
        Instant now = clock.instant();
        List<DiaryEntry> entries = diary.listNow(visit.id());
        Turn turn = VisitWork.of(steps.list(visit.id()), entries, now).turn();
        return Templates.part(new WorkPart(visit.id(), WorkWords.sentence(turn, now), entries));
    }
}
