package afterlength.workshop.agreement;

import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.Visit;
import gg.jte.Content;

/** What this stage tells on the instrument's page. */
public final class AgreementChapter implements Chapter {
    private final Proposals proposals;

    public AgreementChapter(Proposals proposals) {
        this.proposals = proposals;
    }

    @Override
    public String name() {
        return "Agreement";
    }

    @Override
    public Content about(Visit visit) {
        return Templates.part(new ChapterPart(proposals.withoutDays(visit)));
    }
}
