package afterlength.workshop.examination;

import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.Visit;
import gg.jte.Content;

/** What the examination tells on the instrument's page. */
public final class ExaminationChapter implements Chapter {
    private final PhotographStore photographs;
    private final FindingBook book;
    private final MeasureStore measures;

    public ExaminationChapter(PhotographStore photographs, FindingStore findings, MeasureStore measures) {
        this.photographs = photographs;
        this.measures = measures;
        book = new FindingBook(findings, photographs);
    }

    @Override
    public String name() {
        return "Examination";
    }

    @Override
    public Content about(Visit visit) {
        return Templates.part(new ExaminationSummary(
                visit.id(),
                photographs.list(visit.id()),
                book.listNow(visit.id()),
                measures.listNow(visit.id()),
                measures.pairs(visit.id())));
    }
}
