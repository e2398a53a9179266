package afterlength.workshop.plan;

import afterlength.workshop.desk.Frame;
import java.util.List;

/** Why a step stands where it stands. */
record ReasonPage(Frame frame, PlannedLine line, List<PlannedLine> pieces, List<String> reasons) {}
