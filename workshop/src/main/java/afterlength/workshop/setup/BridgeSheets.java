package afterlength.workshop.setup;

import afterlength.craft.setup.Bridge;
import afterlength.craft.setup.BridgeShape;
import afterlength.workshop.desk.Days;
import afterlength.workshop.desk.NotHere;
import afterlength.workshop.instrument.InstrumentStore;
import afterlength.workshop.instrument.Visit;
import afterlength.workshop.ledger.SettingsStore;
import afterlength.workshop.paper.PaperSize;

/** The 1 : 1 sheet of a saved set-up. */
public final class BridgeSheets {
    private final InstrumentStore instruments;
    private final SetupStore setups;
    private final SettingsStore settings;
    private final String drawnBy;

    /** The last value is the program and its version, which stand on every sheet. */
    public BridgeSheets(InstrumentStore instruments, SetupStore setups, SettingsStore settings, String drawnBy) {
        this.instruments = instruments;
        this.setups = setups;
        this.settings = settings;
        this.drawnBy = drawnBy;
    }

    /**
     * Draws the sheet as PDF.
     *
     * @throws NotHere when no set-up of this moment was saved
     */
    public byte[] get(Visit visit, SetupMoment moment) {
        Setup setup = setups.findNow(visit.id(), moment)
                .orElseThrow(() -> new NotHere("saved set-up " + moment.words() + " for visit", visit.number()));
        if (!(Bridge.shape(setup.inputs()) instanceof BridgeShape shape)) {
            throw new NotHere("bridge that can be drawn from the saved set-up of visit", visit.number());
        }
        PaperSize size = settings.get().letterPaper() ? PaperSize.LETTER : PaperSize.A4;
        String name = instruments.get(visit.instrumentId()).name() + ", visit " + visit.number();
        return BridgeSheet.pdf(
                shape, new BridgePaper(name, Days.words(Days.day(setup.savedAt())), drawnBy, size, null));
    }
}
