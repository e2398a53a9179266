package afterlength.workshop.plan;

import afterlength.workshop.desk.Choice;
import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/** Somebody is ill or away. */
record AbsencePage(Frame frame, List<Choice> hands, Typed typed) {}
