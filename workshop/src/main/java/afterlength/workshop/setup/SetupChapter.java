package afterlength.workshop.setup;

import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.desk.Templates;
import afterlength.workshop.instrument.Chapter;
import afterlength.workshop.instrument.Visit;
import gg.jte.Content;
import org.jspecify.annotations.Nullable;

/** What the set-up tells on the instrument's page. */
public final class SetupChapter implements Chapter {
    private final SetupStore setups;

    public SetupChapter(SetupStore setups) {
        this.setups = setups;
    }

    @Override
    public String name() {
        return "Set-up";
    }

    @Override
    public Content about(Visit visit) {
        return Templates.part(
                new SetupSummary(visit, shape(visit, SetupMoment.BEFORE), shape(visit, SetupMoment.AFTER)));
    }

    private @Nullable BridgeShape shape(Visit visit, SetupMoment moment) {
        return setups.findNow(visit.id(), moment)
                .map(setup -> Bridge.shape(setup.inputs()) instanceof BridgeShape shape ? shape : null)
                .orElse(null);
    }
}
