package afterlength.workshop.instrument;

import afterlength.craft.geometry.InstrumentShape;

/** The shape by which an instrument is drawn: that of its kind, at its own body length when it is known. */
public final class DrawnShape {
    private DrawnShape() {}

    public static InstrumentShape of(Instrument instrument) {
        InstrumentShape shape = ofKind(instrument.kind());
        Double body_mm = instrument.bodyLengthMm();
        return body_mm == null ? shape : shape.withBodyLength(body_mm);
    }

    private static InstrumentShape ofKind(InstrumentKind kind) {
        return switch (kind) {
            case VIOLIN, OTHER -> InstrumentShape.violin();
            case VIOLA -> InstrumentShape.viola();
            case CELLO -> InstrumentShape.cello();
            case DOUBLE_BASS -> InstrumentShape.bass();
        };
    }
}
