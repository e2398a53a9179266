package afterlength.workshop.desk;

/** The sides from which an instrument is drawn. */
public enum InstrumentView {
    FRONT,
    BACK,
    SIDE,
    SCROLL
}
