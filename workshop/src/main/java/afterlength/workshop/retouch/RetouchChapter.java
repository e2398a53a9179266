package afterlength.workshop.retouch;

import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.Visit;
import gg.jte.Content;

/** What varnish and retouch tell on the instrument's page. */
public final class RetouchChapter implements Chapter {
    private final CaseDesk cases;
    private final MendedLineStore lines;

    public RetouchChapter(CaseDesk cases, MendedLineStore lines) {
        this.cases = cases;
        this.lines = lines;
    }

    @Override
    public String name() {
        return "Retouch";
    }

    @Override
    public Content about(Visit visit) {
        return Templates.part(new RetouchSummary(visit, cases.list(visit.id()), lines.listNow(visit.id())));
    }
}
