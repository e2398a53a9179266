package afterlength.start.demo;

/** The bridge from the tailpiece side, with the end of the board behind it and the head of the tailpiece before it. */
final class BridgeScene {
    private BridgeScene() {}

    static Canvas painted(DemoInstrument instrument) {
        Setting setting = new Setting(instrument);
        Backdrop.paint(setting.canvas(), instrument.noise());
        new BellyAhead(setting).paint();
        new BoardEnd(setting).paint();
        StringsAhead strings = new StringsAhead(setting);
        strings.paintBehindBridge();
        new StandingBridge(setting).paint();
        TailpieceHead.paint(setting);
        strings.paintBeforeBridge();
        return setting.canvas();
    }
}
