package afterlength.workshop.examination;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/** A sitting being written down. */
record SittingPage(Frame frame, long visitId, List<String> hands, Typed typed) {
    MoistureLine moisture() {
        return MoistureLine.beside(typed);
    }
}
