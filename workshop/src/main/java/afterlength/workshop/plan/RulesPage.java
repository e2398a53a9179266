package afterlength.workshop.plan;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import java.util.List;

/** What the shop has for its work. */
record RulesPage(Frame frame, List<String> hands, Typed typed) {}
