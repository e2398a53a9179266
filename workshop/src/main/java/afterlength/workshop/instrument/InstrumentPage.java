package afterlength.workshop.instrument;

import afterlength.workshop.desk.Frame;
import java.util.List;

record InstrumentPage(Frame frame, Instrument instrument, Owner owner, List<VisitStory> stories) {}
