package afterlength.workshop.handover;

import afterlength.workshop.desk.Frame;
import afterlength.workshop.desk.Typed;
import afterlength.workshop.instrument.Visit;

record HandoverPage(Frame frame, Visit visit, Typed typed, boolean saved) {}
