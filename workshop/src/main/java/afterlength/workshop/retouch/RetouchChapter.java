package afterlength.workshop.retouch;

import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.Visit;
import gg.jte.Content;

/** What varnish and retouch tell on the instrument's page. */
public final class RetouchChapter implements Chapter {
    private final CaseDesk cases;

    public RetouchChapter(CaseDesk cases) {
        this.cases = cases;
    }

    @Override
    public String name() {
        return "Retouch";
    }

    @Override
    public Content about(Visit visit) {
        return Templates.part(new RetouchSummary(visit, cases.list(visit.id())));
    }
}
