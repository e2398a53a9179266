package afterlength.workshop.instrument;

import afterlength.craft.geometry.InstrumentShape;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.InstrumentDrawing;
import afterlength.workshop.desk.InstrumentView;
import java.util.List;

record InstrumentPage(Frame frame, Instrument instrument, Owner owner, List<VisitStory> stories) {

    /** A drawing of the kind, at this instrument's body length when it is known; it shows what it is, not what it measures. */
    String drawing() {
        InstrumentShape shape = shapeOf(instrument.kind());
        Double body = instrument.bodyLengthMm();
        return InstrumentDrawing.decoration(body == null ? shape : shape.withBodyLength(body), InstrumentView.FRONT);
    }

    private static InstrumentShape shapeOf(InstrumentKind kind) {
        return switch (kind) {
            case VIOLIN, OTHER -> InstrumentShape.violin();
            case VIOLA -> InstrumentShape.viola();
            case CELLO -> InstrumentShape.cello();
            case DOUBLE_BASS -> InstrumentShape.bass();
        };
    }
}
