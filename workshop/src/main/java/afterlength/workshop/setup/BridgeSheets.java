package afterlength.workshop.setup;

import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.examination.MeasureStore;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.Settings;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.paper.PaperSize;
import afterlength.workshop.paper.SheetTooSmall;
import java.util.function.Supplier;

/** The sheets of a saved set-up, all at 1 : 1. */
public final class BridgeSheets {
    private final InstrumentStore instruments;
    private final SetupStore setups;
    private final MeasureStore measures;
    private final SettingsStore settings;
    private final String drawnBy;

    /** The last value is the program and its version, which stand on every sheet. */
    public BridgeSheets(
            InstrumentStore instruments,
            SetupStore setups,
            MeasureStore measures,
            SettingsStore settings,
            String drawnBy) {
        this.instruments = instruments;
        this.setups = setups;
        this.measures = measures;
        this.settings = settings;
        this.drawnBy = drawnBy;
    }

    /**
     * The bridge sheet as PDF.
     *
     * @throws NotHere when no set-up of this moment was saved, or no sheet holds the bridge
     */
    public byte[] get(Visit visit, SetupMoment moment) {
        Setup setup = saved(visit, moment);
        return fitting(visit, () -> BridgeSheet.pdf(shape(visit, setup), paper(visit, setup)));
    }

    /** The bridge as a drawing for a cutter. */
    public String svg(Visit visit, SetupMoment moment) {
        Setup setup = saved(visit, moment);
        return BridgeSheet.svg(shape(visit, setup), paper(visit, setup));
    }

    /** The crown and its negative, to glue on card. */
    public byte[] crown(Visit visit, SetupMoment moment) {
        Setup setup = saved(visit, moment);
        return fitting(visit, () -> CrownSheet.pdf(shape(visit, setup), paper(visit, setup)));
    }

    /** The card for the lid of the case. */
    public byte[] card(Visit visit, SetupMoment moment) {
        Setup setup = saved(visit, moment);
        return SetupCardSheet.pdf(shape(visit, setup), paper(visit, setup), CardFacts.of(measures.listNow(visit.id())));
    }

    /** The paper, or the reason why there is none when the bridge is larger than a sheet. */
    private static byte[] fitting(Visit visit, Supplier<byte[]> drawn) {
        try {
            return drawn.get();
        } catch (SheetTooSmall larger) {
            throw new NotHere("sheet large enough at 1 : 1 for the bridge of visit", visit.number());
        }
    }

    private Setup saved(Visit visit, SetupMoment moment) {
        return setups.findNow(visit.id(), moment)
                .orElseThrow(() -> new NotHere("saved set-up " + moment.words() + " for visit", visit.number()));
    }

    private static BridgeShape shape(Visit visit, Setup setup) {
        if (Bridge.shape(setup.inputs()) instanceof BridgeShape shape) {
            return shape;
        }
        throw new NotHere("bridge that can be drawn from the saved set-up of visit", visit.number());
    }

    private BridgePaper paper(Visit visit, Setup setup) {
        Settings now = settings.get();
        return new BridgePaper(
                instruments.get(visit.instrumentId()).name() + ", visit " + visit.number(),
                Days.words(Days.day(setup.savedAt())),
                drawnBy,
                now.letterPaper() ? PaperSize.LETTER : PaperSize.A4,
                now.demonstration(),
                null);
    }
}
