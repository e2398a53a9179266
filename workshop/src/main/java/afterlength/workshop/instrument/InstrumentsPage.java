package afterlength.workshop.instrument;

import afterlength.workshop.desk.Frame;
import java.util.List;

record InstrumentsPage(Frame frame, String asked, List<Listing> found) {}
