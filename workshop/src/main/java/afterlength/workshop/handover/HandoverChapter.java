package afterlength.workshop.handover;

import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.Visit;
import gg.jte.Content;

/** What the handover tells on the instrument's page. */
public final class HandoverChapter implements Chapter {
    private final HandoverStore handovers;

    public HandoverChapter(HandoverStore handovers) {
        this.handovers = handovers;
    }

    @Override
    public String name() {
        return "Handover";
    }

    @Override
    public Content about(Visit visit) {
        return Templates.part(new HandoverSummary(
                visit, handovers.findNow(visit.id()).orElse(null), handovers.wentHomeBefore(visit.id())));
    }
}
