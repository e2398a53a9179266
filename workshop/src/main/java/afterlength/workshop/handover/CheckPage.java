package afterlength.workshop.handover;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;

record CheckPage(Frame frame, YearCheck check, Typed typed) {}
