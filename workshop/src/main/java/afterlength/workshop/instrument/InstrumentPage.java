package afterlength.workshop.instrument;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.InstrumentDrawing;
import afterlength.workshop.desk.InstrumentView;
import java.util.List;

record InstrumentPage(Frame frame, Instrument instrument, Owner owner, List<VisitStory> stories) {

    /** A drawing of the kind, at this instrument's body length when it is known; it shows what it is, not what it measures. */
    String drawing() {
        return InstrumentDrawing.decoration(DrawnShape.of(instrument), InstrumentView.FRONT);
    }
}
